namespace Cartwright.Ordering;

/// <summary>
/// Places an image at one end of a larger chip and fills the rest. At the start for boards that tie unused upper address lines
/// low; at the end for those that tie them high, and for processors whose vectors stand at the top of memory.
/// </summary>
/// <remarks>The image may overlap the chip, even be a part of it; where it does, it is overwritten.</remarks>
public static class Placement
{
    /// <summary>Places the image at offset 0 and fills what is above it.</summary>
    /// <param name="image">The image.</param>
    /// <param name="chip">The chip's cells, at least as many.</param>
    /// <param name="fill">The byte for the rest, usually the erased value 0xFF.</param>
    /// <exception cref="ArgumentException">The image is longer than the chip.</exception>
    public static void Start(ReadOnlySpan<byte> image, Span<byte> chip, byte fill)
    {
        image.CopyTo(SpanGuard.RequireRoom(chip, image.Length));
        chip[image.Length..].Fill(fill);
    }

    /// <summary>Places the image so that it ends where the chip ends, and fills what is below it.</summary>
    /// <param name="image">The image.</param>
    /// <param name="chip">The chip's cells, at least as many.</param>
    /// <param name="fill">The byte for the rest, usually the erased value 0xFF.</param>
    /// <exception cref="ArgumentException">The image is longer than the chip.</exception>
    public static void End(ReadOnlySpan<byte> image, Span<byte> chip, byte fill)
    {
        SpanGuard.RequireRoom(chip, image.Length);
        image.CopyTo(chip[^image.Length..]);
        chip[..^image.Length].Fill(fill);
    }

    /// <summary>The inverse of <see cref="Start"/>: the image, as a slice of the chip.</summary>
    /// <param name="chip">The chip's cells.</param>
    /// <param name="length">The image's length in bytes.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or greater than the chip's.</exception>
    public static ReadOnlySpan<byte> TakeStart(ReadOnlySpan<byte> chip, int length) => chip[..length];

    /// <summary>The inverse of <see cref="End"/>: the image, as a slice of the chip.</summary>
    /// <param name="chip">The chip's cells.</param>
    /// <param name="length">The image's length in bytes.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or greater than the chip's.</exception>
    public static ReadOnlySpan<byte> TakeEnd(ReadOnlySpan<byte> chip, int length) => chip[^length..];
}
