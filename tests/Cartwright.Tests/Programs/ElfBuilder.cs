using System.Buffers.Binary;

namespace Cartwright.Tests.Programs;

/// <summary>Builds small 32-bit ELF files, right or wrong. Layout: System V gABI (from memory), checked by readelf in a test.</summary>
internal sealed class ElfBuilder
{
    public const int HeaderSize = 0x34;
    public const int EntrySize = 0x20;

    private readonly List<uint[]> _headers = [];
    private readonly List<(int Offset, ulong Value, int Size)> _changes = [];
    private readonly List<byte> _body = [];

    public bool BigEndian { get; init; }

    public ushort Machine { get; init; } = 4;

    public ushort Type { get; init; } = 2;

    public uint Entry { get; init; }

    /// <summary>Adds a load segment and its bytes.</summary>
    public ElfBuilder Load(uint runAddress, uint loadAddress, byte[] bytes, uint? memorySize = null)
    {
        _body.AddRange(bytes);
        return Header(1, (uint)(_body.Count - bytes.Length), runAddress, loadAddress, (uint)bytes.Length, memorySize ?? (uint)bytes.Length);
    }

    /// <summary>Adds a program header; the offset counts from the end of the table.</summary>
    public ElfBuilder Header(uint type, uint bodyOffset, uint runAddress, uint loadAddress, uint fileSize, uint memorySize)
    {
        _headers.Add([type, bodyOffset, runAddress, loadAddress, fileSize, memorySize, 5, 1]);
        return this;
    }

    /// <summary>Overwrites a field of the finished file, in its byte order.</summary>
    public ElfBuilder Change(int offset, ulong value, int size)
    {
        _changes.Add((offset, value, size));
        return this;
    }

    public byte[] Build()
    {
        var bodyAt = HeaderSize + (EntrySize * _headers.Count);
        var file = new byte[bodyAt + _body.Count];
        byte[] start = [0x7F, (byte)'E', (byte)'L', (byte)'F', 1, (byte)(BigEndian ? 2 : 1), 1];
        start.CopyTo(file, 0);
        Put(file, 0x10, Type, 2);
        Put(file, 0x12, Machine, 2);
        Put(file, 0x14, 1, 4);
        Put(file, 0x18, Entry, 4);
        Put(file, 0x1C, HeaderSize, 4);
        Put(file, 0x28, HeaderSize, 2);
        Put(file, 0x2A, EntrySize, 2);
        Put(file, 0x2C, (uint)_headers.Count, 2);
        for (var i = 0; i < _headers.Count; i++)
        {
            for (var field = 0; field < 8; field++)
            {
                var value = _headers[i][field] + (field == 1 ? (uint)bodyAt : 0);
                Put(file, HeaderSize + (EntrySize * i) + (4 * field), value, 4);
            }
        }

        _body.CopyTo(file, bodyAt);
        foreach (var (offset, value, size) in _changes) Put(file, offset, value, size);
        return file;
    }

    private void Put(byte[] file, int offset, ulong value, int size)
    {
        Span<byte> field = stackalloc byte[8];
        if (BigEndian) BinaryPrimitives.WriteUInt64BigEndian(field, value << (64 - (8 * size)));
        else BinaryPrimitives.WriteUInt64LittleEndian(field, value);
        field[..size].CopyTo(file.AsSpan(offset));
    }
}
