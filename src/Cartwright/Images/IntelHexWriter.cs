using System.Buffers.Binary;

namespace Cartwright.Images;

/// <summary>Writes bytes as Intel HEX. Source: Intel Hexadecimal Object File Format Specification, revision A, 1988.</summary>
/// <remarks>
/// 16 data bytes a record, the form every programmer reads. A record never crosses a multiple of 16, so none crosses a
/// 64 KiB edge. Addresses beyond 64 KiB are given by type 04 records. Upper case, CR LF.
/// </remarks>
public static class IntelHexWriter
{
    private const int DataBytes = 16;
    private const byte TypeData = 0;
    private const byte TypeEnd = 1;
    private const byte TypeUpperAddress = 4;

    /// <summary>Writes every byte, then the end record.</summary>
    /// <param name="stream">Where the text goes; left open.</param>
    /// <param name="data">The bytes.</param>
    /// <param name="address">Address of the first byte, 0 to 0xFFFFFFFF.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bytes do not lie in the 32-bit address space.</exception>
    public static void Write(Stream stream, ReadOnlySpan<byte> data, long address = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(address);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(address, (1L << 32) - data.Length);
        using var lines = new RecordWriter(stream);
        var upper = 0L;
        while (!data.IsEmpty)
        {
            if (address >> 16 != upper)
            {
                upper = address >> 16;
                WriteUpperAddress(lines, (ushort)upper);
            }

            var length = (int)Math.Min(data.Length, DataBytes - (address % DataBytes));
            WriteRecord(lines, TypeData, (ushort)address, data[..length]);
            data = data[length..];
            address += length;
        }

        WriteRecord(lines, TypeEnd, 0, default);
        lines.Flush();
    }

    private static void WriteUpperAddress(RecordWriter lines, ushort upper)
    {
        Span<byte> data = stackalloc byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(data, upper);
        WriteRecord(lines, TypeUpperAddress, 0, data);
    }

    private static void WriteRecord(RecordWriter lines, byte type, ushort offset, ReadOnlySpan<byte> data)
    {
        Span<byte> record = stackalloc byte[4 + DataBytes + 1];
        record = record[..(4 + data.Length + 1)];
        record[0] = (byte)data.Length;
        BinaryPrimitives.WriteUInt16BigEndian(record[1..], offset);
        record[3] = type;
        data.CopyTo(record[4..]);
        record[^1] = (byte)-RecordWriter.Sum(record[..^1]);
        lines.Write(":"u8, record);
    }
}
