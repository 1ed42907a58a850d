using System.Globalization;

namespace Cartwright.Platforms.Atari2600;

/// <summary>Which scheme the bytes of an image look like: size first, then signatures (Bank-Switching). It only ever serves to warn.</summary>
internal static class SchemeGuess
{
    private const int K = 1 << 10;
    private const string FirstBytesAlike = "the first 256 bytes of all banks are alike, as under RAM";

    /// <summary>The scheme and what speaks for it; no reason where only the size does.</summary>
    public static (string? Scheme, string? Reason) Of(ReadOnlySpan<byte> image) => image.Length switch
    {
        2 * K => WritesPastRam(image) ? ("cv", "it writes to $1400-$17FF") : ("2k", null),
        4 * K => image[0xFFA..].StartsWith("SC"u8) && !image[..0x100].ContainsAnyExcept(image[0]) ? ("4ksc", "its first 256 bytes are alike, and SC stands at $1FFA") : ("4k", null),
        8 * K => OfTwoBanks(image),
        12 * K => ("fa", null),
        16 * K => BanksBeginAlike(image) ? ("f6sc", FirstBytesAlike) : Accesses(image, 0xE0, 0xEB) ? ("e7", "it accesses $1FE0-$1FEB") : ("f6", null),
        32 * K => BanksBeginAlike(image) ? ("f4sc", FirstBytesAlike) : Count(image, [0x85, 0x3F]) >= 2 ? ("3f", "it writes to $3F") : ("f4", null),
        >= 64 * K => OfMark(image),
        _ => (null, null),
    };

    /// <summary>Offset of an instruction that accesses $1FF4-$1FFB, or the same behind other upper lines; null when there is none.</summary>
    public static int? HotSpotAccess(ReadOnlySpan<byte> image)
    {
        for (var i = 0; i + 2 < image.Length; i++)
        {
            if (IsAbsolute(image[i]) && image[i + 1] is >= 0xF4 and <= 0xFB && (image[i + 2] & 0x1F) == 0x1F)
            {
                return i;
            }
        }

        return null;
    }

    private static (string? Scheme, string? Reason) OfTwoBanks(ReadOnlySpan<byte> image) =>
        BanksBeginAlike(image) ? ("f8sc", FirstBytesAlike)
        : Accesses(image, 0xE0, 0xF7) ? ("e0", "it accesses $1FE0-$1FF7")
        : Count(image, [0x85, 0x3F]) >= 2 ? ("3f", "it writes to $3F")
        : Count(image, [0x20, 0x00, 0xD0, 0xC6, 0xC5]) > 0 ? ("fe", "it calls $D000 as games of that scheme do")
        : Count(image, [0x8D, 0x40, 0x02]) + Count(image, [0xAD, 0x40, 0x02]) > 0 ? ("ua", "it accesses $0240")
        : Is0840(image) ? ("0840", "it accesses $0800 and $0840")
        : ("f8", null);

    private static bool Is0840(ReadOnlySpan<byte> image) =>
        Count(image, [0xAD, 0x00, 0x08]) + Count(image, [0xAD, 0x40, 0x08]) + Count(image, [0x0C, 0x00, 0x08]) >= 2
        || Count(image, [0x0C, 0x00, 0x08, 0x4C]) + Count(image, [0x0C, 0xFF, 0x0F, 0x4C]) >= 2;

    // In a large image two bytes come by chance, so that more of them are asked for.
    private static (string? Scheme, string? Reason) OfMark(ReadOnlySpan<byte> image)
    {
        var often = image.Length / (16 * K);
        return Count(image, "BFBF"u8) > 0 ? ("bf", "it holds the letters BFBF")
            : Count(image, [0x85, 0x3E]) >= often ? ("3e", string.Create(CultureInfo.InvariantCulture, $"it writes to $3E {often} times or more"))
            : Count(image, [0x85, 0x3F]) >= often ? ("3f", string.Create(CultureInfo.InvariantCulture, $"it writes to $3F {often} times or more"))
            : (null, null);
    }

    private static bool BanksBeginAlike(ReadOnlySpan<byte> image)
    {
        for (var bank = 4 * K; bank < image.Length; bank += 4 * K)
        {
            if (!image.Slice(bank, 0x100).SequenceEqual(image[..0x100]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool WritesPastRam(ReadOnlySpan<byte> image)
    {
        for (var i = 0; i + 2 < image.Length; i++)
        {
            if (image[i] is 0x8D or 0x99 or 0x9D && image[i + 2] is (>= 0x14 and <= 0x17) or (>= 0xF4 and <= 0xF7))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Accesses(ReadOnlySpan<byte> image, byte first, byte last)
    {
        for (var i = 0; i + 2 < image.Length; i++)
        {
            if (image[i] is 0x8D or 0xAD && image[i + 1] >= first && image[i + 1] <= last && image[i + 2] is 0x1F or 0xFF)
            {
                return true;
            }
        }

        return false;
    }

    // LDA, LDX, LDY, STA, STX, STY, BIT, CMP and the undocumented NOP with an absolute address.
    private static bool IsAbsolute(byte opcode) => opcode is 0xAD or 0xAE or 0xAC or 0x8D or 0x8E or 0x8C or 0x2C or 0xCD or 0x0C;

    private static int Count(ReadOnlySpan<byte> image, ReadOnlySpan<byte> pattern) => image.Count(pattern);
}
