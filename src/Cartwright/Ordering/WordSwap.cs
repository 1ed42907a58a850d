using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.Ordering;

/// <summary>
/// Changes the order of bytes inside 16- and 32-bit words, as 16-bit chips and their programmers ask for.
/// Every swap is its own inverse.
/// </summary>
/// <remarks>
/// Source and destination are either the same bytes or do not overlap at all. A destination longer than the source keeps
/// its tail. No alignment is asked for.
/// </remarks>
public static class WordSwap
{
    /// <summary>Exchanges the two bytes of each 16-bit word: <c>out[i] = in[i ^ 1]</c>.</summary>
    /// <param name="source">An even number of bytes.</param>
    /// <param name="destination">At least as many bytes.</param>
    /// <exception cref="ArgumentException">The length is odd, the destination too short, or the two overlap in part.</exception>
    public static void Swap16(ReadOnlySpan<byte> source, Span<byte> destination)
    {
        destination = Prepare(source, sizeof(ushort), destination);
        BinaryPrimitives.ReverseEndianness(
            MemoryMarshal.Cast<byte, ushort>(source),
            MemoryMarshal.Cast<byte, ushort>(destination));
    }

    /// <summary>Exchanges the two bytes of each 16-bit word in place.</summary>
    /// <param name="bytes">An even number of bytes.</param>
    /// <exception cref="ArgumentException">The length is odd.</exception>
    public static void Swap16(Span<byte> bytes) => Swap16(bytes, bytes);

    /// <summary>Reverses the four bytes of each 32-bit word: <c>out[i] = in[i ^ 3]</c>.</summary>
    /// <param name="source">A multiple of 4 bytes.</param>
    /// <param name="destination">At least as many bytes.</param>
    /// <exception cref="ArgumentException">The length is no multiple of 4, the destination too short, or the two overlap in part.</exception>
    public static void Swap32(ReadOnlySpan<byte> source, Span<byte> destination)
    {
        destination = Prepare(source, sizeof(uint), destination);
        BinaryPrimitives.ReverseEndianness(
            MemoryMarshal.Cast<byte, uint>(source),
            MemoryMarshal.Cast<byte, uint>(destination));
    }

    /// <summary>Reverses the four bytes of each 32-bit word in place.</summary>
    /// <param name="bytes">A multiple of 4 bytes.</param>
    /// <exception cref="ArgumentException">The length is no multiple of 4.</exception>
    public static void Swap32(Span<byte> bytes) => Swap32(bytes, bytes);

    /// <summary>
    /// Exchanges the two halves of each 32-bit word, each half in its own order: <c>out[i] = in[i ^ 2]</c>.
    /// The same as <see cref="Swap32(ReadOnlySpan{byte}, Span{byte})"/> followed by <see cref="Swap16(Span{byte})"/>.
    /// </summary>
    /// <param name="source">A multiple of 4 bytes.</param>
    /// <param name="destination">At least as many bytes.</param>
    /// <exception cref="ArgumentException">The length is no multiple of 4, the destination too short, or the two overlap in part.</exception>
    public static void HalfwordSwap(ReadOnlySpan<byte> source, Span<byte> destination)
    {
        destination = Prepare(source, sizeof(uint), destination);
        var from = MemoryMarshal.Cast<byte, Vector<uint>>(source);
        var to = MemoryMarshal.Cast<byte, Vector<uint>>(destination);
        for (var i = 0; i < from.Length; i++)
            to[i] = (from[i] << 16) | (from[i] >>> 16);

        var done = from.Length * Vector<byte>.Count;
        HalfwordSwapScalar(source[done..], destination[done..]);
    }

    /// <summary>Exchanges the two halves of each 32-bit word in place.</summary>
    /// <param name="bytes">A multiple of 4 bytes.</param>
    /// <exception cref="ArgumentException">The length is no multiple of 4.</exception>
    public static void HalfwordSwap(Span<byte> bytes) => HalfwordSwap(bytes, bytes);

    internal static void HalfwordSwapScalar(ReadOnlySpan<byte> source, Span<byte> destination)
    {
        var from = MemoryMarshal.Cast<byte, uint>(source);
        var to = MemoryMarshal.Cast<byte, uint>(destination);
        for (var i = 0; i < from.Length; i++)
            to[i] = BitOperations.RotateLeft(from[i], 16);
    }

    private static Span<byte> Prepare(ReadOnlySpan<byte> source, int unit, Span<byte> destination)
    {
        SpanGuard.RequireMultiple(source, unit);
        destination = SpanGuard.RequireRoom(destination, source.Length);
        SpanGuard.RequireSameOrApart(source, destination);
        return destination;
    }
}
