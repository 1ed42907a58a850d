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
            var large = 1 << BitOperations.Log2((uint)bytes.Length);
            sum += repeats * ByteSum.Sum64(bytes[..large]);
            bytes = bytes[large..];
            repeats *= (ulong)large / Math.Max(1, BitOperations.RoundUpToPowerOf2((uint)bytes.Length));
        }

        return sum;
    }
}
