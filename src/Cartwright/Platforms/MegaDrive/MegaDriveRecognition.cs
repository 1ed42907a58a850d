using Cartwright.Ordering;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>Knows Mega Drive images by SEGA at the header's start, in whatever order of bytes it shows there.</summary>
internal static class MegaDriveRecognition
{
    private const int Block = 0x4000;
    private const int HalfHeader = MegaDriveHeader.Start / 2;
    private const int Letters = 6;

    private static ReadOnlySpan<byte> CopierMark => [0xAA, 0xBB];

    public static RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        Straight(file) ?? Blocks(file) ?? Woven(file, file.Length / 2, ImageOrder.OddEvenHalves, Certainty.Structural, 0) ?? OneChip(file);

    private static RecognitionClaim? Straight(ReadOnlySpan<byte> file)
    {
        Span<byte> swapped = stackalloc byte[Letters];
        foreach (var prefix in CopierPrefix.Fits(file) ? [0, CopierPrefix.Length] : (int[])[0])
        {
            var letters = At(file, prefix + MegaDriveHeader.Start);
            WordSwap.Swap16(letters, swapped);
            var order = SystemTypes.OpensLock(letters) ? ImageOrder.Console : SystemTypes.OpensLock(swapped) ? ImageOrder.ByteSwapped : (ImageOrder?)null;
            if (order is { } found)
            {
                return new RecognitionClaim(Certainty.Exact, found == ImageOrder.Console ? "SEGA at 0x0100" : "SEGA at 0x0100 once the bytes of each word are exchanged") { Order = found, PrefixLength = prefix };
            }
        }

        return null;
    }

    // Sources disagree about which half of a block comes first: the one that shows SEGA is right.
    private static RecognitionClaim? Blocks(ReadOnlySpan<byte> file)
    {
        if (file.Length % Block != CopierPrefix.Length || file.Length <= CopierPrefix.Length)
        {
            return null;
        }

        var body = file[CopierPrefix.Length..];
        return Woven(body, Block / 2, ImageOrder.OddEvenBlocks, Sure(file), CopierPrefix.Length) ?? Woven(body, Block / 2, ImageOrder.EvenOddBlocks, Sure(file), CopierPrefix.Length);
    }

    private static Certainty Sure(ReadOnlySpan<byte> file) => file[8..].StartsWith(CopierMark) ? Certainty.Exact : Certainty.Structural;

    private static RecognitionClaim? Woven(ReadOnlySpan<byte> body, int distance, ImageOrder order, Certainty certainty, int prefix)
    {
        Span<byte> woven = stackalloc byte[Letters];
        var first = At(body, HalfHeader)[..(Letters / 2)];
        var second = At(body, HalfHeader + distance)[..(Letters / 2)];
        var oddFirst = order != ImageOrder.EvenOddBlocks;
        Lanes.Merge(oddFirst ? second : first, oddFirst ? first : second, woven);
        return SystemTypes.OpensLock(woven)
            ? new RecognitionClaim(certainty, $"SEGA at 0x0100 once odd and even bytes are brought together ({Manifests.ManifestWords.Word(order)})") { Order = order, PrefixLength = prefix }
            : null;
    }

    private static RecognitionClaim? OneChip(ReadOnlySpan<byte> file) => ProgramOrder.IsOneChip(file)
        ? new RecognitionClaim(Certainty.Candidate, "every second letter of a system text at 0x0080: one chip of two; the other is needed")
        : null;

    // As many letters as asked for; zeros where the file ends before.
    private static ReadOnlySpan<byte> At(ReadOnlySpan<byte> file, int offset) =>
        offset + Letters <= file.Length ? file.Slice(offset, Letters) : new byte[Letters];
}
