using System.Buffers;
using System.Buffers.Binary;

namespace Cartwright.Patching;

/// <summary>Writes the records of an IPS patch so that none begins at the offset that reads as the end mark.</summary>
/// <param name="target">What the patch is to make.</param>
internal readonly ref struct IpsWriter(ReadOnlySpan<byte> target)
{
    private const int LongestRecord = 0xFFFF;

    private readonly ReadOnlySpan<byte> _target = target;
    private readonly ArrayBufferWriter<byte> _patch = new();

    /// <summary>The patch so far.</summary>
    public byte[] ToArray() => _patch.WrittenSpan.ToArray();

    /// <summary>Writes bytes of the patch as they are.</summary>
    public void Text(ReadOnlySpan<byte> bytes) => _patch.Write(bytes);

    /// <summary>Writes a number of three bytes.</summary>
    public void Number24(int value) => _patch.Write([(byte)(value >> 16), (byte)(value >> 8), (byte)value]);

    /// <summary>Records for bytes of the target.</summary>
    /// <param name="from">The first.</param>
    /// <param name="end">The one after the last.</param>
    public void Data(int from, int end)
    {
        while (from < end)
        {
            if (from == IpsEnd.EndOffset) from--;
            var length = Math.Min(LongestRecord, end - from);
            Number24(from);
            Number16(length);
            _patch.Write(_target.Slice(from, length));
            from += length;
        }
    }

    /// <summary>Records for bytes of the target that are all alike.</summary>
    /// <param name="from">The first.</param>
    /// <param name="end">The one after the last.</param>
    public void Run(int from, int end)
    {
        while (from < end)
        {
            if (from == IpsEnd.EndOffset)
            {
                Data(from, from + 1);
                from++;
                continue;
            }

            var length = Math.Min(LongestRecord, end - from);
            Number24(from);
            Number16(0);
            Number16(length);
            _patch.Write(_target.Slice(from, 1));
            from += length;
        }
    }

    private void Number16(int value) => BinaryPrimitives.WriteUInt16BigEndian(Claim(), (ushort)value);

    private Span<byte> Claim()
    {
        var span = _patch.GetSpan(sizeof(ushort));
        _patch.Advance(sizeof(ushort));
        return span;
    }
}
