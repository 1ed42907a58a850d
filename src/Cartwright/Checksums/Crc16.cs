namespace Cartwright.Checksums;

/// <summary>The cyclic redundancy check of 16 bits with polynomial 1021, starting from FFFF, no bits reflected, nothing added at the end (CRC-16/IBM-3740).</summary>
public static class Crc16
{
    private const ushort Start = 0xFFFF;
    private const ushort Polynomial = 0x1021;

    private static readonly ushort[] Steps = [.. Enumerable.Range(0, 0x100).Select(static value => Step((ushort)(value << 8)))];

    /// <summary>The check of bytes.</summary>
    /// <param name="bytes">The bytes.</param>
    public static ushort Compute(ReadOnlySpan<byte> bytes) => Continue(Start, bytes);

    /// <summary>The check of bytes that lie in two runs.</summary>
    /// <param name="first">The first run.</param>
    /// <param name="second">The run behind it.</param>
    public static ushort Compute(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second) => Continue(Continue(Start, first), second);

    private static ushort Continue(ushort crc, ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes)
        {
            crc = (ushort)((crc << 8) ^ Steps[(crc >> 8) ^ value]);
        }

        return crc;
    }

    private static ushort Step(ushort crc)
    {
        for (var bit = 0; bit < 8; bit++)
        {
            crc = (ushort)((crc & 0x8000) != 0 ? (crc << 1) ^ Polynomial : crc << 1);
        }

        return crc;
    }
}
