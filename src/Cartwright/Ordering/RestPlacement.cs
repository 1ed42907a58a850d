using System.Numerics;

namespace Cartwright.Ordering;

/// <summary>
/// Places the rest of an image that is no power of two where a bus line begins to select it: its largest power of two is
/// repeated up to there, and the rest follows. Of six units whose rest is selected from the ninth on, 0 1 2 3 0 1 2 3 4 5 is seen.
/// </summary>
/// <remarks>A HuCard of 384 KiB is 256 KiB below bank $40 and 128 KiB from there on (three public programs agree; addresses not kept).</remarks>
public static class RestPlacement
{
    /// <summary>Length of the image with its rest in place; the image's own length when it has no rest, or the rest lies there anyway.</summary>
    /// <param name="length">The image's length in bytes.</param>
    /// <param name="at">Where the rest is selected, a power of two.</param>
    public static int Length(int length, int at) => IsApart(length, at) ? at + length - First(length) : length;

    /// <summary>Places an image.</summary>
    /// <param name="image">The image.</param>
    /// <param name="at">Where the rest is selected, a power of two.</param>
    /// <param name="placed">Receives it; as long as <see cref="Length"/> says, apart from the image.</param>
    public static void Place(ReadOnlySpan<byte> image, int at, Span<byte> placed)
    {
        if (!IsApart(image.Length, at))
        {
            image.CopyTo(placed);
            return;
        }

        var first = First(image.Length);
        Mirror.Fill(image[..first], placed[..at]);
        image[first..].CopyTo(placed[at..]);
    }

    /// <summary>The inverse of <see cref="Place"/>.</summary>
    /// <param name="placed">The image with its rest in place.</param>
    /// <param name="at">Where the rest is selected, a power of two.</param>
    /// <param name="image">Receives the image; its length is the image's.</param>
    public static void Take(ReadOnlySpan<byte> placed, int at, Span<byte> image)
    {
        if (!IsApart(image.Length, at))
        {
            placed[..image.Length].CopyTo(image);
            return;
        }

        var first = First(image.Length);
        placed[..first].CopyTo(image);
        placed.Slice(at, image.Length - first).CopyTo(image[first..]);
    }

    // Images of up to half the place are seen whole below it, and repeat there.
    private static bool IsApart(int length, int at) => length > at / 2 && length < at && !BitOperations.IsPow2(length);

    private static int First(int length) => 1 << BitOperations.Log2((uint)length);
}
