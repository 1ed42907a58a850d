using System.Globalization;
using System.Numerics;
using Cartwright.Manifests;
using Cartwright.Ordering;

namespace Cartwright.Platforms.GameBoy;

/// <summary>Knows Game Boy images by the boot bitmap, by a right header checksum, or by a header that fits the file.</summary>
internal static class GameBoyRecognition
{
    private const int HeaderEnd = GameBoyHeader.Start + GameBoyHeader.Length;
    private const int BitmapAt = GameBoyHeader.Start + BootBitmap.Offset;
    private const int LargestRomSize = 8;
    private const int LargestRamSize = 5;

    // An MBC1 board for several games shows each at a bank of its own (Pan Docs, MBC1).
    private const int GameBank = 256 << 10;
    private const int Games = 4;
    private const int RomBank = 16 << 10;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => CopierPrefix.Best(file, Image);

    private static RecognitionClaim? Image(ReadOnlySpan<byte> image)
    {
        if (image.Length < HeaderEnd)
        {
            return null;
        }

        if (HasBitmap(image, 0))
        {
            return Exact(image, "the boot bitmap at 0x0104");
        }

        // The header checksum is the same with the bytes of each word exchanged, so that only the bitmap shows the order.
        Span<byte> swapped = stackalloc byte[HeaderEnd];
        WordSwap.Swap16(image[..HeaderEnd], swapped);
        return HasBitmap(swapped, 0) ? Exact(swapped, "the boot bitmap at 0x0104 once the bytes of each word are exchanged") with { Order = ImageOrder.ByteSwapped }
            : LaterStart(image) is { } start ? Exact(image, string.Create(CultureInfo.InvariantCulture, $"the boot bitmap at 0x{start + BitmapAt:X6}, where a cartridge of several games starts"))
            : Checked(image) ?? Unfinished(image);
    }

    // Smaller than two windows, or of another size, 512 bytes of prefix would look like a menu.
    private static int? LaterStart(ReadOnlySpan<byte> image)
    {
        if (HasMenu(image))
        {
            return image.Length - GameBoyHeader.Window;
        }

        for (var game = 1; game < Games && image.Length == Games * GameBank; game++)
        {
            if (HasBitmap(image, game * GameBank))
            {
                return game * GameBank;
            }
        }

        return null;
    }

    // One file in 256 has that checksum by chance, and codes of zero are legal: alone it makes a candidate.
    private static RecognitionClaim? Checked(ReadOnlySpan<byte> image)
    {
        var header = image[GameBoyHeader.Start..HeaderEnd];
        return HasLegalCodes(header) && header[0x34..0x4D].ContainsAnyExcept((byte)0) && GameBoyChecksums.HeaderIsRight(header)
            ? new RecognitionClaim(IsEntry(header) || image.Length % RomBank == 0 ? Certainty.Structural : Certainty.Candidate, $"the header checksum 0x{header[0x4D]:X2} at 0x014D is right and {Codes(header)}; the boot bitmap is not there, so that the order of bytes does not show{SizeRemark(header, image.Length)}")
            {
                Variant = Variant(image),
            }
            : null;
    }

    private static RecognitionClaim? Unfinished(ReadOnlySpan<byte> image)
    {
        var header = image[GameBoyHeader.Start..HeaderEnd];
        return HasLegalCodes(header) && IsEntry(header) && IsTitle(header[0x34..0x43]) && image.Length == RomSize(header) && LeadsSomewhere(image, header)
            ? new RecognitionClaim(Certainty.Candidate, $"a jump at 0x0100 and {Codes(header)}, and the file has the {ByteSize.Words(image.Length)} that says; boot bitmap and header checksum were not filled in")
            {
                Variant = Variant(image),
            }
            : null;
    }

    // Codes that are all zero prove nothing: then the jump itself has to lead to a program.
    private static bool LeadsSomewhere(ReadOnlySpan<byte> image, ReadOnlySpan<byte> header) =>
        header[0x34..0x4D].ContainsAnyExcept((byte)0)
        || (BootChecks.Target(header[..4]) is { } target && target >= HeaderEnd && target < GameBoyHeader.Window && image[target] is not (0x00 or 0xFF));

    private static bool HasLegalCodes(ReadOnlySpan<byte> header) =>
        CartridgeTypes.Find(header[0x47]) is not null && header[0x48] <= LargestRomSize && header[0x49] <= LargestRamSize;

    private static bool IsEntry(ReadOnlySpan<byte> header) => header is [0x00 or 0xF3, 0xC3, ..] or [0xC3 or 0x18, ..];

    private static bool IsTitle(ReadOnlySpan<byte> title)
    {
        foreach (var letter in title)
        {
            if (letter is not (0x00 or (>= 0x20 and <= 0x7E)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool HasMenu(ReadOnlySpan<byte> image) =>
        image.Length >= 2 * GameBoyHeader.Window && BitOperations.IsPow2(image.Length) && HasBitmap(image, image.Length - GameBoyHeader.Window);

    private static bool HasBitmap(ReadOnlySpan<byte> image, int window) =>
        window + BitmapAt + BootBitmap.Length <= image.Length && BootBitmap.IsRight(image.Slice(window + BitmapAt, BootBitmap.Length));

    private static RecognitionClaim Exact(ReadOnlySpan<byte> image, string reason) => new(Certainty.Exact, reason) { Variant = Variant(image) };

    // A board that switches 32 KiB at once has a bitmap in its last bank as well: the type tells it from an MMM01's menu.
    private static string Variant(ReadOnlySpan<byte> image)
    {
        var hasMenu = HasMenu(image);
        var mmm01 = IsMmm01(image[GameBoyHeader.Start..]) || (hasMenu && (!HasBitmap(image, 0) || IsMmm01(image[^(GameBoyHeader.Window - GameBoyHeader.Start)..])));
        return (mmm01 ? GameBoyPlatform.Mmm01 : GameBoyPlatform.Standard).Variant;
    }

    private static bool IsMmm01(ReadOnlySpan<byte> header) => CartridgeTypes.Find(header[0x47])?.Controller == BankControllers.Mmm01;

    private static string Codes(ReadOnlySpan<byte> header) =>
        string.Create(CultureInfo.InvariantCulture, $"the codes at 0x0147 are legal (type {header[0x47]:X2}, ROM {header[0x48]:X2}, RAM {header[0x49]:X2})");

    private static string SizeRemark(ReadOnlySpan<byte> header, int length) =>
        RomSize(header) == length ? "" : $"; the ROM code says {ByteSize.Words(RomSize(header))}, the file has {ByteSize.Words(length)}";

    private static long RomSize(ReadOnlySpan<byte> header) => (long)GameBoyHeader.Window << header[0x48];
}
