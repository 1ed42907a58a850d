using System.Numerics;

namespace Cartwright.Ordering;

/// <summary>
/// Repeats an image through a larger chip the way a board with undecoded upper address lines shows it. An image that is a
/// power of two repeats whole. Any other is its largest power of two followed by the remainder, and the remainder repeats
/// (by this same rule) until it is as long as the part before it: 3 of 4 units show as 0 1 2 2, 5 of 8 as 0 1 2 3 4 4 4 4.
/// </summary>
/// <remarks>The rule is the one SNES checksums use (SNESdev Wiki, ROM header); for other consoles it is common practice.</remarks>
public static class Mirror
{
    /// <summary>The offset inside the image that answers at an address.</summary>
    /// <param name="address">The address, from 0, however far behind the image.</param>
    /// <param name="length">The image's length in bytes, at least 1 and at most <see cref="int.MaxValue"/>.</param>
    /// <returns>An offset from 0 to <paramref name="length"/> − 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The address is negative, or the length outside its range.</exception>
    public static int Map(long address, long length)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(address);
        ArgumentOutOfRangeException.ThrowIfLessThan(length, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(length, int.MaxValue);

        var start = 0L;
        while (address >= length)
        {
            var block = 1L << BitOperations.Log2((ulong)address);
            address -= block;
            if (length > block)
            {
                length -= block;
                start += block;
            }
        }

        return (int)(start + address);
    }

    /// <summary>Fills a chip so that each cell <c>a</c> holds <c>image[Map(a, image.Length)]</c>.</summary>
    /// <param name="image">The image, at least one byte. It may overlap the chip; where it does, it is overwritten.</param>
    /// <param name="chip">The chip's cells: as many as the image has bytes, or any greater number.</param>
    /// <exception cref="ArgumentException">The image is empty or longer than the chip.</exception>
    public static void Fill(ReadOnlySpan<byte> image, Span<byte> chip)
    {
        if (image.IsEmpty)
            throw new ArgumentException("An empty image cannot be repeated.", nameof(image));

        image.CopyTo(SpanGuard.RequireRoom(chip, image.Length));
        Extend(chip, image.Length);
    }

    /// <summary>
    /// The inverse of <see cref="Fill"/> as a question: is the chip what its own first <paramref name="length"/> bytes fill it
    /// to? If so, those bytes are the image.
    /// </summary>
    /// <param name="chip">The chip's cells.</param>
    /// <param name="length">The image's length, from 1 to the chip's.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static bool IsMirrored(ReadOnlySpan<byte> chip, int length)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(length, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(length, chip.Length);
        return IsExtended(chip, length);
    }

    /// <summary>
    /// The smallest power of two that divides the length and after which the bytes repeat to the end; the whole length when
    /// they do not repeat.
    /// </summary>
    /// <param name="bytes">The bytes of a chip or an image.</param>
    /// <returns>A length in bytes; 0 for no bytes. Bytes that are all alike have a true length of 1.</returns>
    public static int TrueLength(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
            return 0;

        var period = 1 << BitOperations.TrailingZeroCount(bytes.Length);
        if (!Repeats(bytes, period))
            return bytes.Length;

        while (period > 1 && Repeats(bytes[..period], period / 2))
            period /= 2;

        return period;
    }

    // The first `length` bytes of the area are there; the rest is made from them.
    private static void Extend(Span<byte> area, int length)
    {
        var large = LargestPowerOfTwo(length);
        if (large < length)
            Extend(Remainder(area, large), length - large);

        for (var done = ViewLength(area.Length, length); done < area.Length;)
        {
            var count = Math.Min(done, area.Length - done);
            area[..count].CopyTo(area[done..]);
            done += count;
        }
    }

    private static bool IsExtended(ReadOnlySpan<byte> area, int length)
    {
        var large = LargestPowerOfTwo(length);
        return (large == length || IsExtended(Remainder(area, large), length - large))
            && Repeats(area, ViewLength(area.Length, length));
    }

    // What stands behind the large block, up to as many bytes as that block has.
    private static Span<byte> Remainder(Span<byte> area, int large) =>
        area.Slice(large, Math.Min(large, area.Length - large));

    private static ReadOnlySpan<byte> Remainder(ReadOnlySpan<byte> area, int large) =>
        area.Slice(large, Math.Min(large, area.Length - large));

    // The image completed to a power of two, or as much of it as fits.
    private static int ViewLength(int areaLength, int length) =>
        (int)Math.Min(areaLength, BitOperations.RoundUpToPowerOf2((uint)length));

    private static int LargestPowerOfTwo(int length) => 1 << BitOperations.Log2((uint)length);

    private static bool Repeats(ReadOnlySpan<byte> bytes, int period) => bytes[period..].SequenceEqual(bytes[..^period]);
}
