using System.Buffers.Binary;
using System.Globalization;

namespace Cartwright.Platforms.Msx;

/// <summary>Knows an MSX cartridge by its bytes.</summary>
internal static class MsxRecognition
{
    private const int LoadHeaderLength = 7;
    private const byte LoadMark = 0xFE;
    private const int Smallest = 0x2000;
    private const int TextSample = 0x100;
    private const int PageTwo = 0x8000;

    private static ReadOnlySpan<byte> Ending => "\t\n\r\x1A"u8;

    /// <summary>Whether a file begins with the header BLOAD expects and a cartridge's mark follows (from memory).</summary>
    public static bool HasLoadHeader(ReadOnlySpan<byte> file) =>
        file.Length > LoadHeaderLength + MsxHeader.Length && file[0] == LoadMark && file[LoadHeaderLength..].StartsWith("AB"u8);

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        var prefix = HasLoadHeader(file) ? LoadHeaderLength : 0;
        var image = file[prefix..];
        return (At(image, 0) ?? At(image, MsxMapping.PageSize)) is { } claim ? claim with { PrefixLength = prefix } : null;
    }

    private static RecognitionClaim? At(ReadOnlySpan<byte> image, int header)
    {
        if (image.Length < Math.Max(Smallest, header + MsxHeader.Length) || !image[header..].StartsWith("AB"u8) || IsText(image.Slice(header, Math.Min(TextSample, image.Length - header))))
        {
            return null;
        }

        var init = Word(image, header + MsxHeader.Init);
        var below = init >= PageTwo ? PageTwo : MsxMapping.PageOne;
        var starts = init is >= MsxMapping.PageOne and < 0xC000
            ? init - below < image.Length - header
            : init == 0 && (Word(image, header + 8) != 0 || Word(image, header + 4) != 0);
        return starts
            ? new RecognitionClaim(Certainty.Structural, string.Create(CultureInfo.InvariantCulture, $"AB at 0x{header:X4}, and INIT is ${init:X4}")) { Variant = Variant(image.Length, header, init, Word(image, header + 8)) }
            : null;
    }

    // Above the plain sizes a mapper decides, and that no byte tells.
    private static string? Variant(int length, int header, int init, int text) =>
        header > 0 ? length <= 0x10000 ? "page-0" : null
        : length > 0xC000 ? null
        : length <= MsxMapping.PageSize && (init >= PageTwo || (init == 0 && text != 0)) ? "page-2"
        : "page-1";

    private static int Word(ReadOnlySpan<byte> image, int at) => BinaryPrimitives.ReadUInt16LittleEndian(image[at..]);

    private static bool IsText(ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes)
        {
            if (value is (< 0x20 or > 0x7E) && !Ending.Contains(value))
            {
                return false;
            }
        }

        return true;
    }
}
