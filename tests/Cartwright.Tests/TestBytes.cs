using System.IO.Hashing;

namespace Cartwright.Tests;

/// <summary>Bytes that tests make instead of storing them, and the digest that worked values are given in.</summary>
internal static class TestBytes
{
    /// <summary>
    /// The first n bytes of a linear congruential generator: x starts at 1; x = (1664525 x + 1013904223) mod 2^32 gives one
    /// byte, its highest.
    /// </summary>
    public static byte[] L(int n)
    {
        var bytes = new byte[n];
        var x = 1u;
        for (var i = 0; i < n; i++)
        {
            x = unchecked((x * 1664525) + 1013904223);
            bytes[i] = (byte)(x >> 24);
        }

        return bytes;
    }

    /// <summary>The bytes under the header of the worked SNES images: (3 i) XOR (i >> 7).</summary>
    public static byte[] Snes(int n) => Make(n, i => unchecked((3 * i) ^ (i >> 7)));

    /// <summary>The bytes under the header of the worked Game Boy images: 5 i + (i >> 8).</summary>
    public static byte[] GameBoy(int n) => Make(n, i => unchecked((5 * i) + (i >> 8)));

    /// <summary>n bytes that are all alike.</summary>
    public static byte[] All(byte value, int n) => Make(n, _ => value);

    /// <summary>CRC-32/ISO-HDLC in eight hexadecimal digits.</summary>
    public static string Crc(ReadOnlySpan<byte> bytes) => Crc32.HashToUInt32(bytes).ToString("X8");

    private static byte[] Make(int n, Func<int, int> value)
    {
        var bytes = new byte[n];
        for (var i = 0; i < n; i++)
            bytes[i] = unchecked((byte)value(i));

        return bytes;
    }
}
