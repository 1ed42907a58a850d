using Cartwright.Ordering;

namespace Cartwright.Platforms.Snes;

// Knows SNES images by points for each place a header can lie at; nothing in the image is a mark of its own.
internal static class SnesRecognition
{
    private const int SmallestInterleaved = 128 << 10;
    private const int InterleavedMode = 0x7FD5;

    // No mapping reaches further.
    private const int Largest = 8 << 20;

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        file.Length <= Largest + CopierPrefix.Length ? CopierPrefix.Best(file, Image) : null;

    private static RecognitionClaim? Image(ReadOnlySpan<byte> image)
    {
        var plain = Best(new SnesImage(image, ImageOrder.Console));
        var whole = MayBeInterleaved(image) ? Best(new SnesImage(image, ImageOrder.UpperLowerHalves)) : null;
        return whole is not null && whole.Score > (plain?.Score ?? 0) ? whole : plain;
    }

    // The upper half of the first bank comes first, so that a header of the HiROM kind stands where LoROM has its own.
    private static bool MayBeInterleaved(ReadOnlySpan<byte> image) =>
        image.Length >= SmallestInterleaved && image.Length % ImageOrders.Unit(ImageOrder.UpperLowerHalves) == 0 && (image[InterleavedMode] & 0x2F) is 0x21 or 0x25 or 0x2A;

    private static RecognitionClaim? Best(SnesImage image)
    {
        SnesScore? best = null;
        foreach (var mapping in SnesMapping.All)
        {
            if (SnesScore.Of(image, mapping) is { } score && (best is null || score.Beats(best.Value, image.Length)))
            {
                best = score;
            }
        }

        return best is { Points: >= SnesScore.Threshold } found
            ? new RecognitionClaim(Certainty.Structural, found.Words + (image.Order == ImageOrder.Console ? "" : "; the upper halves of all banks stand before the lower ones"))
            {
                Order = image.Order,
                Variant = found.Mapping.Name,
                Score = found.Points,
            }
            : null;
    }
}
