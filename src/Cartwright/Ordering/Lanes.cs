using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Cartwright.Ordering;

/// <summary>
/// Deals the bytes of an image to the byte-wide chips of a wider bus, and gathers them again: byte <c>k</c> belongs to lane
/// <c>k mod lanes</c>. Two lanes serve a 16-bit bus, four a 32-bit one. Merging is the exact inverse of splitting.
/// </summary>
/// <remarks>
/// A destination must not share a byte with a source or with another destination. Longer destinations keep their tails.
/// No alignment is asked for. Lanes are counted in address order; which of them is a bus's low byte is the board's matter.
/// </remarks>
public static class Lanes
{
    /// <summary>Takes one lane out of an image.</summary>
    /// <param name="source">The image, a multiple of <paramref name="lanes"/> bytes.</param>
    /// <param name="lane">The lane, from 0.</param>
    /// <param name="lanes">2 or 4.</param>
    /// <param name="destination">At least <c>source.Length / lanes</c> bytes.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lanes"/> or <paramref name="lane"/> is none of the above.</exception>
    /// <exception cref="ArgumentException">A length is wrong, or the spans overlap.</exception>
    public static void Split(ReadOnlySpan<byte> source, int lane, int lanes, Span<byte> destination)
    {
        RequireLane(lane, lanes);
        SpanGuard.RequireMultiple(source, lanes);
        destination = SpanGuard.RequireRoom(destination, source.Length / lanes);
        SpanGuard.RequireApart(source, destination);

        var done = lanes == 2 && BitConverter.IsLittleEndian ? SplitVectors(source, lane, destination) : 0;
        SplitScalar(source[(done * lanes)..], lane, lanes, destination[done..]);
    }

    /// <summary>Takes both lanes of a 16-bit bus out of an image in one pass.</summary>
    /// <param name="source">The image, an even number of bytes.</param>
    /// <param name="even">Receives the bytes at even offsets: at least half as many.</param>
    /// <param name="odd">Receives the bytes at odd offsets: at least half as many.</param>
    /// <exception cref="ArgumentException">A length is wrong, or the spans overlap.</exception>
    public static void Split2(ReadOnlySpan<byte> source, Span<byte> even, Span<byte> odd)
    {
        SpanGuard.RequireMultiple(source, 2);
        even = SpanGuard.RequireRoom(even, source.Length / 2);
        odd = SpanGuard.RequireRoom(odd, source.Length / 2);
        SpanGuard.RequireApart(source, even);
        SpanGuard.RequireApart(source, odd);
        SpanGuard.RequireApart(even, odd);

        var done = BitConverter.IsLittleEndian ? Split2Vectors(source, even, odd) : 0;
        SplitScalar(source[(done * 2)..], 0, 2, even[done..]);
        SplitScalar(source[(done * 2)..], 1, 2, odd[done..]);
    }

    /// <summary>Puts one lane back into an image and leaves the other lanes as they are: what a single chip's read-back gives.</summary>
    /// <param name="part">The bytes of the lane.</param>
    /// <param name="lane">The lane, from 0.</param>
    /// <param name="lanes">2 or 4.</param>
    /// <param name="destination">At least <c>part.Length × lanes</c> bytes.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lanes"/> or <paramref name="lane"/> is none of the above.</exception>
    /// <exception cref="ArgumentException">The destination is too short, or the spans overlap.</exception>
    public static void Insert(ReadOnlySpan<byte> part, int lane, int lanes, Span<byte> destination)
    {
        RequireLane(lane, lanes);
        destination = PrepareMerge(part, part.Length, lanes, destination);
        InsertScalar(part, lane, lanes, destination);
    }

    /// <summary>Gathers the two lanes of a 16-bit bus.</summary>
    /// <param name="even">The bytes for even offsets.</param>
    /// <param name="odd">As many bytes for odd offsets.</param>
    /// <param name="destination">At least twice as many bytes.</param>
    /// <exception cref="ArgumentException">The parts differ in length, the destination is too short, or the spans overlap.</exception>
    public static void Merge(ReadOnlySpan<byte> even, ReadOnlySpan<byte> odd, Span<byte> destination)
    {
        destination = PrepareMerge(even, even.Length, 2, destination);
        destination = PrepareMerge(odd, even.Length, 2, destination);

        var done = BitConverter.IsLittleEndian ? MergeVectors(even, odd, destination) : 0;
        InsertScalar(even[done..], 0, 2, destination[(done * 2)..]);
        InsertScalar(odd[done..], 1, 2, destination[(done * 2)..]);
    }

    /// <summary>Gathers the four lanes of a 32-bit bus.</summary>
    /// <param name="first">The bytes for offsets 0, 4, 8 …</param>
    /// <param name="second">As many bytes for offsets 1, 5, 9 …</param>
    /// <param name="third">As many bytes for offsets 2, 6, 10 …</param>
    /// <param name="fourth">As many bytes for offsets 3, 7, 11 …</param>
    /// <param name="destination">At least four times as many bytes.</param>
    /// <exception cref="ArgumentException">The parts differ in length, the destination is too short, or the spans overlap.</exception>
    public static void Merge(
        ReadOnlySpan<byte> first,
        ReadOnlySpan<byte> second,
        ReadOnlySpan<byte> third,
        ReadOnlySpan<byte> fourth,
        Span<byte> destination)
    {
        destination = PrepareMerge(first, first.Length, 4, destination);
        destination = PrepareMerge(second, first.Length, 4, destination);
        destination = PrepareMerge(third, first.Length, 4, destination);
        destination = PrepareMerge(fourth, first.Length, 4, destination);

        InsertScalar(first, 0, 4, destination);
        InsertScalar(second, 1, 4, destination);
        InsertScalar(third, 2, 4, destination);
        InsertScalar(fourth, 3, 4, destination);
    }

    internal static void SplitScalar(ReadOnlySpan<byte> source, int lane, int lanes, Span<byte> destination)
    {
        for (var i = 0; i < destination.Length; i++)
            destination[i] = source[(i * lanes) + lane];
    }

    internal static void InsertScalar(ReadOnlySpan<byte> part, int lane, int lanes, Span<byte> destination)
    {
        for (var i = 0; i < part.Length; i++)
            destination[(i * lanes) + lane] = part[i];
    }

    // The three loops below see two bytes of the image as one little-endian word: its low byte is the even one.
    // Each returns how many bytes of a lane it has done.
    private static int SplitVectors(ReadOnlySpan<byte> source, int lane, Span<byte> destination)
    {
        var words = MemoryMarshal.Cast<byte, Vector<ushort>>(source);
        var to = MemoryMarshal.Cast<byte, Vector<byte>>(destination);
        var low = new Vector<ushort>(0x00FF);
        var shift = lane * 8;
        for (var i = 0; i < to.Length; i++)
            to[i] = Vector.Narrow((words[2 * i] >>> shift) & low, (words[(2 * i) + 1] >>> shift) & low);

        return to.Length * Vector<byte>.Count;
    }

    private static int Split2Vectors(ReadOnlySpan<byte> source, Span<byte> even, Span<byte> odd)
    {
        var words = MemoryMarshal.Cast<byte, Vector<ushort>>(source);
        var evens = MemoryMarshal.Cast<byte, Vector<byte>>(even);
        var odds = MemoryMarshal.Cast<byte, Vector<byte>>(odd);
        var low = new Vector<ushort>(0x00FF);
        for (var i = 0; i < evens.Length; i++)
        {
            var first = words[2 * i];
            var second = words[(2 * i) + 1];
            evens[i] = Vector.Narrow(first & low, second & low);
            odds[i] = Vector.Narrow(first >>> 8, second >>> 8);
        }

        return evens.Length * Vector<byte>.Count;
    }

    private static int MergeVectors(ReadOnlySpan<byte> even, ReadOnlySpan<byte> odd, Span<byte> destination)
    {
        var evens = MemoryMarshal.Cast<byte, Vector<byte>>(even);
        var odds = MemoryMarshal.Cast<byte, Vector<byte>>(odd);
        var words = MemoryMarshal.Cast<byte, Vector<ushort>>(destination);
        for (var i = 0; i < evens.Length; i++)
        {
            Vector.Widen(evens[i], out var firstEven, out var secondEven);
            Vector.Widen(odds[i], out var firstOdd, out var secondOdd);
            words[2 * i] = firstEven | (firstOdd << 8);
            words[(2 * i) + 1] = secondEven | (secondOdd << 8);
        }

        return evens.Length * Vector<byte>.Count;
    }

    private static void RequireLane(int lane, int lanes)
    {
        if (lanes is not (2 or 4))
            throw new ArgumentOutOfRangeException(nameof(lanes), lanes, "There are 2 or 4 lanes.");

        ArgumentOutOfRangeException.ThrowIfNegative(lane);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(lane, lanes);
    }

    private static Span<byte> PrepareMerge(
        ReadOnlySpan<byte> part,
        int length,
        int lanes,
        Span<byte> destination,
        [CallerArgumentExpression(nameof(part))] string name = "")
    {
        if (part.Length != length)
            throw new ArgumentException($"Lanes differ in length: {part.Length} bytes beside {length}.", name);

        destination = SpanGuard.RequireRoom(destination, (long)length * lanes);
        SpanGuard.RequireApart(part, destination);
        return destination;
    }
}
