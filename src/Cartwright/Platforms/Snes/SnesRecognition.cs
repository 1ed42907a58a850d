using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Ordering;

namespace Cartwright.Platforms.Snes;

/// <summary>Knows SNES images by points for each place a header can lie at; nothing in the image is a mark of its own (SNESdev Wiki, ROM header; fullsnes; the weights were measured on homebrew images).</summary>
internal static class SnesRecognition
{
    private const int Threshold = 8;
    private const int SmallestInterleaved = 128 << 10;
    private const int InterleavedMode = 0x7FD5;

    // Offsets from the header's first byte, which the processor sees at $00:FFB0.
    private const int ModeAt = 0x25;
    private const int RomSizeAt = 0x27;
    private const int RamSizeAt = 0x28;
    private const int CountryAt = 0x29;
    private const int DeveloperAt = 0x2A;
    private const int PairAt = 0x2C;
    private const int ResetAt = 0x4C;

    private static ReadOnlySpan<byte> GoodOpcodes => [0x78, 0x18, 0x38, 0x9C, 0x4C, 0x5C];

    private static ReadOnlySpan<byte> BadOpcodes => [0x00, 0x02, 0xDB, 0xFF];

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => CopierPrefix.Best(file, Image);

    private static RecognitionClaim? Image(ReadOnlySpan<byte> image)
    {
        var plain = Best(image);
        if (!MayBeInterleaved(image))
        {
            return plain;
        }

        var copy = new byte[image.Length];
        ImageOrders.ToConsole(ImageOrder.UpperLowerHalves, image, copy);
        return Best(copy) is { } woven && woven.Score > (plain?.Score ?? 0) ? woven with { Order = ImageOrder.UpperLowerHalves } : plain;
    }

    private static bool MayBeInterleaved(ReadOnlySpan<byte> image) =>
        image.Length >= SmallestInterleaved && image.Length % ImageOrders.Unit(ImageOrder.UpperLowerHalves) == 0 && (image[InterleavedMode] & 0x2F) is 0x21 or 0x25 or 0x2A;

    private static RecognitionClaim? Best(ReadOnlySpan<byte> image)
    {
        RecognitionClaim? best = null;
        foreach (var mapping in SnesMapping.All)
        {
            if (image.Length >= mapping.Header + 0x50 && Score(image, mapping) is var score && score >= Threshold && score > (best?.Score ?? 0))
            {
                best = new RecognitionClaim(Certainty.Structural, string.Create(CultureInfo.InvariantCulture, $"{score} points for a {mapping.Name} header at 0x{mapping.Title:X6}; {Threshold} are enough"))
                {
                    Variant = mapping.Name,
                    Score = score,
                };
            }
        }

        return best;
    }

    private static int Score(ReadOnlySpan<byte> image, SnesMapping mapping)
    {
        var header = image[mapping.Header..];
        return PairPoints(image, header, mapping) + ModePoints(header[ModeAt], mapping) + ResetPoints(image, header, mapping)
            + SizePoints(header[RomSizeAt], image.Length)
            + (header[RamSizeAt] <= 8 ? 1 : 0)
            + (header[CountryAt] <= 0x14 ? 1 : 0)
            + (IsTitle(header.Slice(SnesMapping.TitleInHeader, 21)) ? 1 : 0)
            + (header[DeveloperAt] == 0x33 && IsCode(header.Slice(2, 4)) ? 1 : 0);
    }

    // The sum is taken over the whole image, so only where the pair says that one is stored.
    private static int PairPoints(ReadOnlySpan<byte> image, ReadOnlySpan<byte> header, SnesMapping mapping)
    {
        var complement = BinaryPrimitives.ReadUInt16LittleEndian(header[PairAt..]);
        var checksum = BinaryPrimitives.ReadUInt16LittleEndian(header[(PairAt + 2)..]);
        var isTrivial = checksum is 0x0000 or 0xFFFF;
        return (complement ^ checksum) != 0xFFFF ? 0
            : (isTrivial ? 1 : 4) + (SnesChecksum.Sum(image, mapping.Header + PairAt) == checksum ? 6 : 0);
    }

    private static int ModePoints(byte mode, SnesMapping mapping) =>
        (mode & 0xE0) == 0x20 && mapping.Modes.Contains((byte)(mode & 0x0F)) ? 3 : -2;

    private static int ResetPoints(ReadOnlySpan<byte> image, ReadOnlySpan<byte> header, SnesMapping mapping)
    {
        var reset = BinaryPrimitives.ReadUInt16LittleEndian(header[ResetAt..]);
        if (reset < 0x8000)
        {
            return -4;
        }

        var at = mapping.Offset(reset);
        return 2 + (at >= image.Length ? 0 : GoodOpcodes.Contains(image[at]) ? 2 : BadOpcodes.Contains(image[at]) ? -2 : 0);
    }

    private static int SizePoints(byte code, int length) =>
        code is >= 0x05 and <= 0x0D && 1024L << code is var size && size >= length && length > size / 2 ? 2 : 0;

    private static bool IsTitle(ReadOnlySpan<byte> title)
    {
        foreach (var letter in title)
        {
            if (letter is not ((>= 0x20 and <= 0x7E) or (>= 0xA1 and <= 0xDF)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsCode(ReadOnlySpan<byte> code)
    {
        foreach (var letter in code)
        {
            if (letter != ' ' && !char.IsAsciiLetterOrDigit((char)letter))
            {
                return false;
            }
        }

        return true;
    }
}
