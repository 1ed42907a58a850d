using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.Checksums;

/// <summary>The sum of all bytes, each from 0 to 255: what most console headers store and what programmers display.</summary>
public static class ByteSum
{
    // A 16-bit counter takes this many pairs of bytes (at most 2 × 255 each) before it could overflow.
    private const int PairsPerCounter = ushort.MaxValue / (2 * byte.MaxValue);

    /// <summary>The sum modulo 2^16.</summary>
    /// <param name="bytes">The bytes; none sum to 0.</param>
    public static ushort Sum16(ReadOnlySpan<byte> bytes) => (ushort)Sum64(bytes);

    /// <summary>The sum modulo 2^32.</summary>
    /// <param name="bytes">The bytes; none sum to 0.</param>
    public static uint Sum32(ReadOnlySpan<byte> bytes) => (uint)Sum64(bytes);

    /// <summary>The whole sum.</summary>
    /// <param name="bytes">The bytes; none sum to 0.</param>
    public static ulong Sum64(ReadOnlySpan<byte> bytes)
    {
        var pairs = MemoryMarshal.Cast<byte, Vector<ushort>>(bytes);
        var sum = Sum64Scalar(bytes[(pairs.Length * Vector<byte>.Count)..]);
        while (!pairs.IsEmpty)
        {
            var count = Math.Min(pairs.Length, PairsPerCounter);
            sum += SumPairs(pairs[..count]);
            pairs = pairs[count..];
        }

        return sum;
    }

    internal static ulong Sum64Scalar(ReadOnlySpan<byte> bytes)
    {
        var sum = 0UL;
        foreach (var value in bytes)
            sum += value;

        return sum;
    }

    private static uint SumPairs(ReadOnlySpan<Vector<ushort>> pairs)
    {
        var counters = Vector<ushort>.Zero;
        var low = new Vector<ushort>(0x00FF);
        foreach (var pair in pairs)
            counters += (pair & low) + (pair >>> 8);

        Vector.Widen(counters, out var lower, out var upper);
        return Vector.Sum(lower + upper);
    }
}
