using System.Buffers.Binary;

namespace Cartwright.Images;

/// <summary>Writes bytes as Motorola S-records. Source: srec_motorola(5) manual page.</summary>
/// <remarks>
/// 32 data bytes a record; a header record, data records of the narrowest type that reaches the highest address, the number of
/// data records unless it exceeds 24 bits, and the end record that goes with the type, with start address 0. Upper case, CR LF.
/// </remarks>
public static class SRecordWriter
{
    private const int DataBytes = 32;
    private const int MostAddressBytes = 4;

    /// <summary>Writes the header, every byte, the number of records and the end record.</summary>
    /// <param name="stream">Where the text goes; left open.</param>
    /// <param name="data">The bytes.</param>
    /// <param name="header">Text of the header record, cut at 32 characters; anything but printable ASCII becomes a question mark.</param>
    /// <param name="address">Address of the first byte, 0 to 0xFFFFFFFF.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bytes do not lie in the 32-bit address space.</exception>
    public static void Write(Stream stream, ReadOnlySpan<byte> data, string header, long address = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(address);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(address, (1L << 32) - data.Length);
        using var lines = new RecordWriter(stream);
        WriteHeader(lines, header);
        var width = AddressBytes(address + Math.Max(0, data.Length - 1));
        var records = 0L;
        for (; !data.IsEmpty; records++)
        {
            var length = Math.Min(data.Length, DataBytes);
            WriteRecord(lines, width - 1, width, address, data[..length]);
            data = data[length..];
            address += length;
        }

        WriteCount(lines, records);
        WriteRecord(lines, 11 - width, width, 0, default);
        lines.Flush();
    }

    private static int AddressBytes(long highest) => highest switch
    {
        <= 0xFFFF => 2,
        <= 0xFF_FFFF => 3,
        _ => 4,
    };

    private static void WriteHeader(RecordWriter lines, string header)
    {
        Span<byte> text = stackalloc byte[DataBytes];
        var length = Math.Min(header.Length, DataBytes);
        for (var i = 0; i < length; i++) text[i] = header[i] is >= ' ' and <= '~' ? (byte)header[i] : (byte)'?';
        WriteRecord(lines, 0, 2, 0, text[..length]);
    }

    private static void WriteCount(RecordWriter lines, long records)
    {
        if (records <= 0xFFFF) WriteRecord(lines, 5, 2, records, default);
        else if (records <= 0xFF_FFFF) WriteRecord(lines, 6, 3, records, default);
    }

    private static void WriteRecord(RecordWriter lines, int type, int width, long address, ReadOnlySpan<byte> data)
    {
        Span<byte> wide = stackalloc byte[MostAddressBytes];
        BinaryPrimitives.WriteUInt32BigEndian(wide, (uint)address);
        Span<byte> record = stackalloc byte[1 + MostAddressBytes + DataBytes + 1];
        record = record[..(1 + width + data.Length + 1)];
        record[0] = (byte)(record.Length - 1);
        wide[^width..].CopyTo(record[1..]);
        data.CopyTo(record[(1 + width)..]);
        record[^1] = (byte)~RecordWriter.Sum(record[..^1]);
        lines.Write([(byte)'S', (byte)('0' + type)], record);
    }
}
