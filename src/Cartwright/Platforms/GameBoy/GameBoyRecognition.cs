using System.Globalization;
using Cartwright.Ordering;

namespace Cartwright.Platforms.GameBoy;

/// <summary>Knows Game Boy images by the boot bitmap, by a right header checksum, or by a plausible header.</summary>
internal static class GameBoyRecognition
{
    private const int HeaderEnd = GameBoyHeader.Start + GameBoyHeader.Length;
    private const int BitmapAt = GameBoyHeader.Start + BootBitmap.Offset;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => CopierPrefix.Best(file, Image);

    private static RecognitionClaim? Image(ReadOnlySpan<byte> image)
    {
        if (image.Length < HeaderEnd)
        {
            return null;
        }

        if (HasBitmap(image, BitmapAt))
        {
            return Exact("the boot bitmap at 0x0104");
        }

        Span<byte> swapped = stackalloc byte[HeaderEnd];
        WordSwap.Swap16(image[..HeaderEnd], swapped);
        return HasBitmap(swapped, BitmapAt) ? Exact("the boot bitmap at 0x0104 once the bytes of each word are exchanged") with { Order = ImageOrder.ByteSwapped }
            : LaterBitmap(image) is { } at ? Exact(string.Create(CultureInfo.InvariantCulture, $"the boot bitmap at 0x{at:X6}, where a multi-game cartridge starts")) with { Variant = "mmm01" }
            : Plausible(image);
    }

    // A menu in the last 32 KiB, or four games of 256 KiB.
    private static int? LaterBitmap(ReadOnlySpan<byte> image)
    {
        if (image.Length >= 2 * GameBoyHeader.Window && (image.Length & (image.Length - 1)) == 0 && HasBitmap(image, image.Length - GameBoyHeader.Window + BitmapAt))
        {
            return image.Length - GameBoyHeader.Window + BitmapAt;
        }

        foreach (var game in image.Length == 1 << 20 ? [0x40000, 0x80000, 0xC0000] : (int[])[])
        {
            if (HasBitmap(image, game + BitmapAt))
            {
                return game + BitmapAt;
            }
        }

        return null;
    }

    private static RecognitionClaim? Plausible(ReadOnlySpan<byte> image)
    {
        var header = image[GameBoyHeader.Start..HeaderEnd];
        if (CartridgeTypes.Find(header[0x47]) is null || header[0x48] > 8 || header[0x49] > 5 || !header[0x34..0x4D].ContainsAnyExcept((byte)0))
        {
            return null;
        }

        if (GameBoyChecksums.HeaderIsRight(header))
        {
            return new RecognitionClaim(Certainty.Structural, "the header checksum at 0x014D is right and the codes around it are legal; the boot bitmap is not right");
        }

        var starts = header[..2] is [0x00, 0xC3] or [0xF3, 0xC3] or [0xC3, _] or [0x18, _];
        var printable = header[0x34..0x43].IndexOfAnyExceptInRange((byte)0x20, (byte)0x7E) is var other && (other < 0 || !header[(0x34 + other)..0x43].ContainsAnyExcept((byte)0));
        return starts && printable && image.Length == (long)GameBoyHeader.Window << header[0x48]
            ? new RecognitionClaim(Certainty.Candidate, "a jump at 0x0100, a title, and a size code that is the file's; bitmap and checksums were never filled in")
            : null;
    }

    private static bool HasBitmap(ReadOnlySpan<byte> image, int at) =>
        at + BootBitmap.Length <= image.Length && BootBitmap.IsRight(image.Slice(at, BootBitmap.Length));

    private static RecognitionClaim Exact(string reason) => new(Certainty.Exact, reason) { Variant = "gb" };
}
