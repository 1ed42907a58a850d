using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.Ordering;

/// <summary>
/// Reverses the eight bits of each byte (bit 0 with 7, 1 with 6, 2 with 5, 3 with 4): what a board whose data lines run the
/// other way round asks for. Its own inverse.
/// </summary>
public static class BitReverse
{
    private const ulong Pairs = 0x5555_5555_5555_5555;
    private const ulong Quarters = 0x3333_3333_3333_3333;
    private const ulong Halves = 0x0F0F_0F0F_0F0F_0F0F;

    /// <summary>Reverses the bits of each byte.</summary>
    /// <param name="source">The bytes; any number, aligned or not.</param>
    /// <param name="destination">At least as many bytes: the same bytes as the source, or none of them.</param>
    /// <exception cref="ArgumentException">The destination is too short, or the two overlap in part.</exception>
    public static void Reverse8(ReadOnlySpan<byte> source, Span<byte> destination)
    {
        destination = SpanGuard.RequireRoom(destination, source.Length);
        SpanGuard.RequireSameOrApart(source, destination);

        var from = MemoryMarshal.Cast<byte, Vector<ulong>>(source);
        var to = MemoryMarshal.Cast<byte, Vector<ulong>>(destination);
        for (var i = 0; i < from.Length; i++)
            to[i] = Reverse(from[i]);

        var done = from.Length * Vector<byte>.Count;
        Reverse8Scalar(source[done..], destination[done..]);
    }

    /// <summary>Reverses the bits of each byte in place.</summary>
    /// <param name="bytes">The bytes.</param>
    public static void Reverse8(Span<byte> bytes) => Reverse8(bytes, bytes);

    /// <summary>Reverses the bits of one byte.</summary>
    /// <param name="value">The byte.</param>
    /// <returns>Bit 7 of the result is bit 0 of <paramref name="value"/>, and so on.</returns>
    public static byte Reverse8(byte value)
    {
        var bits = (ulong)value;
        bits = ((bits >> 1) & Pairs) | ((bits & Pairs) << 1);
        bits = ((bits >> 2) & Quarters) | ((bits & Quarters) << 2);
        return (byte)((bits >> 4) | (bits << 4));
    }

    internal static void Reverse8Scalar(ReadOnlySpan<byte> source, Span<byte> destination)
    {
        for (var i = 0; i < source.Length; i++)
            destination[i] = Reverse8(source[i]);
    }

    private static Vector<ulong> Reverse(Vector<ulong> bits)
    {
        bits = ((bits >>> 1) & new Vector<ulong>(Pairs)) | ((bits & new Vector<ulong>(Pairs)) << 1);
        bits = ((bits >>> 2) & new Vector<ulong>(Quarters)) | ((bits & new Vector<ulong>(Quarters)) << 2);
        return ((bits >>> 4) & new Vector<ulong>(Halves)) | ((bits & new Vector<ulong>(Halves)) << 4);
    }
}
