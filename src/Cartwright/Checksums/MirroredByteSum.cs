using System.Numerics;

namespace Cartwright.Checksums;

/// <summary>
/// The sum of all bytes of an image completed to a power of two by repeating its remainder, without building that view:
/// the sum a SNES header stores (SNESdev Wiki, ROM header).
/// </summary>
/// <remarks>
/// With p the largest power of two not above the length and q the smallest not below the length of what is left,
/// S = sum of the first p bytes + p ÷ q × S(what is left). For a length that is a power of two S is the plain sum.
/// </remarks>
public static class MirroredByteSum
{
    /// <summary>The sum modulo 2^16.</summary>
    /// <param name="bytes">The image without any container or copier prefix; no bytes sum to 0.</param>
    public static ushort Sum16(ReadOnlySpan<byte> bytes) => (ushort)Sum64(bytes);

    /// <summary>The whole sum.</summary>
    /// <param name="bytes">The image without any container or copier prefix; no bytes sum to 0.</param>
    public static ulong Sum64(ReadOnlySpan<byte> bytes)
    {
        var sum = 0UL;
        var repeats = 1UL;
        while (!bytes.IsEmpty)
        {
            var large = Block(bytes.Length);
            sum += repeats * ByteSum.Sum64(bytes[..large]);
            bytes = bytes[large..];
            repeats *= (ulong)large / Math.Max(1, BitOperations.RoundUpToPowerOf2((uint)bytes.Length));
        }

        return sum;
    }
    /// <summary>How often a byte of the image stands in the completed view, and so how often the sum counts it.</summary>
    /// <param name="offset">The byte's offset in the image.</param>
    /// <param name="length">The image's length in bytes.</param>
    /// <exception cref="ArgumentOutOfRangeException">The offset is outside the image.</exception>
    public static ulong Repeats(int offset, int length)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(offset);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(offset, length);
        var repeats = 1UL;
        for (var large = Block(length); offset >= large; large = Block(length))
        {
            offset -= large;
            length -= large;
            repeats *= (ulong)large / BitOperations.RoundUpToPowerOf2((uint)length);
        }

        return repeats;
    }

    private static int Block(int length) => 1 << BitOperations.Log2((uint)length);
}
