namespace Cartwright.Patching;

/// <summary>Makes IPS patches.</summary>
internal static class IpsMaker
{
    private const int Reach = 0x100_0000;

    // Equal bytes cheaper to write than the head of another record.
    private const int LongestGap = 5;

    // A run record has 8 bytes; inside other bytes it costs the head of a further record as well.
    private const int ShortestRun = 9;
    private const int ShortestRunWithin = 14;

    /// <inheritdoc cref="PatchMake"/>
    public static byte[]? Make(ReadOnlySpan<byte> image, ReadOnlySpan<byte> target, PatchLog log)
    {
        if (!IsInReach(image, target, log)) return null;
        var writer = new IpsWriter(target);
        writer.Text("PATCH"u8);
        for (var at = Equal(image, target, 0); at < target.Length;)
        {
            var end = EndOfChange(image, target, at);
            WriteChange(writer, target, at, end);
            at = end + Equal(image, target, end);
        }

        writer.Text("EOF"u8);
        if (target.Length < image.Length)
        {
            writer.Number24(target.Length);
            log.AddWhole(PatchFindings.IpsCuts, $"The patch cuts the image from {PatchWords.Size(image.Length)} to {PatchWords.Size(target.Length)}.");
        }

        return writer.ToArray();
    }

    private static bool IsInReach(ReadOnlySpan<byte> image, ReadOnlySpan<byte> target, PatchLog log)
    {
        var largest = Math.Max(image.Length, target.Length);
        if (largest > Reach)
        {
            log.AddWhole(PatchFindings.IpsOutOfReach, $"The larger of the two images has {PatchWords.Size(largest)}.", $"at most {PatchWords.Size(Reach)}");
        }

        return largest <= Reach;
    }

    // How many bytes from here on are the same in both. What lies past the base's end is never the same: it must be written to be there.
    private static int Equal(ReadOnlySpan<byte> image, ReadOnlySpan<byte> target, int at) =>
        at >= image.Length ? 0 : image[at..].CommonPrefixLength(target[at..]);

    private static int EndOfChange(ReadOnlySpan<byte> image, ReadOnlySpan<byte> target, int at)
    {
        while (at < Math.Min(image.Length, target.Length))
        {
            var gap = Equal(image, target, at);
            if (gap > LongestGap || at + gap == target.Length) return at;
            at += gap + 1;
        }

        return target.Length;
    }

    private static void WriteChange(IpsWriter writer, ReadOnlySpan<byte> target, int at, int end)
    {
        var written = at;
        for (; at < end;)
        {
            var run = RunLength(target[at..end]);
            var isAlone = at == written || at + run == end;
            if (run >= (isAlone ? ShortestRun : ShortestRunWithin))
            {
                writer.Data(written, at);
                writer.Run(at, at + run);
                written = at + run;
            }

            at += run;
        }

        writer.Data(written, end);
    }

    private static int RunLength(ReadOnlySpan<byte> bytes) => bytes.IndexOfAnyExcept(bytes[0]) is var length and >= 0 ? length : bytes.Length;
}
