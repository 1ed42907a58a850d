using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Roms;

/// <summary>Puts segments into a region: overlaps, size, fill.</summary>
public static class RegionBuilder
{
    /// <summary>Builds a region.</summary>
    /// <param name="rule">What the platform says of it.</param>
    /// <param name="settings">What the manifest says of it; null when it says nothing.</param>
    /// <param name="segments">What the programs put into it, in any order.</param>
    /// <param name="place">Where to point when the region has no settings of its own.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when something is wrong, or when the region is empty and need not be there.</returns>
    public static RegionImage? Build(RegionRule rule, RegionSettings? settings, IEnumerable<PlacedSegment> segments, SourcePlace place, FindingLog log)
    {
        var coverage = segments.ToList();
        if (coverage.Count == 0)
        {
            if (rule.Required)
            {
                log.Add(RomFindings.EmptyRegion, place, $"No program goes into the region `{rule.Name}` ({rule.Meaning}).");
            }

            return null;
        }

        var needed = Needed(coverage);
        var size = Size(rule, settings, needed, coverage, place, log);
        var separate = Separate(Settle(coverage, size ?? needed, rule.Align), log);
        if (size is null || separate is null)
        {
            return null;
        }

        var fill = settings?.Fill ?? rule.Fill;
        return new RegionImage(rule.Name, Place(separate, (int)size, fill), fill, [.. separate]);
    }

    // What lies at the start and what counts back from the end need room beside each other.
    private static long Needed(List<PlacedSegment> coverage) =>
        coverage.Where(static segment => segment.Offset >= 0).Select(static segment => segment.End).DefaultIfEmpty().Max()
        + coverage.Where(static segment => segment.Offset < 0).Select(static segment => -segment.Offset).DefaultIfEmpty().Max();

    // Every offset from the region's first byte, in ascending order.
    private static List<PlacedSegment> Settle(List<PlacedSegment> coverage, long size, RegionAlign align)
    {
        var end = coverage.Where(static segment => segment.Offset >= 0).Select(static segment => segment.End).DefaultIfEmpty().Max();
        var shift = align == RegionAlign.End ? Math.Max(0, size - end) : 0;
        return
        [
            .. coverage
                .Select(segment => segment with { Offset = segment.Offset + (segment.Offset < 0 ? size : shift) })
                .OrderBy(static segment => segment.Offset)
                .ThenBy(static segment => segment.Program, StringComparer.Ordinal),
        ];
    }

    private static long? Size(RegionRule rule, RegionSettings? settings, long needed, List<PlacedSegment> coverage, SourcePlace place, FindingLog log)
    {
        if (settings?.Size is not { } stated)
        {
            var fit = rule.Sizes.Fit(needed);
            if (fit is null)
            {
                log.Add(RomFindings.TooLarge, settings?.Place ?? place,
                    $"The programs end at {ByteSize.Describe(needed)} of the region `{rule.Name}`, pushed there by {Last(coverage)}.", rule.Sizes.Words);
            }

            return fit;
        }

        if (!rule.Sizes.Allows(stated))
        {
            var next = rule.Sizes.Fit(Math.Max(stated, needed));
            log.Add(RomFindings.IllegalSize, settings.SizePlace, $"{ByteSize.Describe(stated)} is no legal size of the region `{rule.Name}`.", rule.Sizes.Words,
                next is null ? null : $"The next legal size is {ByteSize.Format(next.Value)}.");
            return null;
        }

        if (stated < needed)
        {
            var next = rule.Sizes.Fit(needed);
            log.Add(RomFindings.TooSmall, settings.SizePlace,
                $"The size {ByteSize.Describe(stated)} of the region `{rule.Name}` is {ByteSize.Describe(needed - stated)} too small; {Last(coverage)} pushes the end to {ByteSize.Describe(needed)}.",
                remedy: next is null ? null : $"The smallest legal size that holds it is {ByteSize.Format(next.Value)}.");
            return null;
        }

        return stated;
    }

    private static string Last(List<PlacedSegment> coverage) => Range(coverage.MaxBy(static segment => segment.End)!);

    // Cuts away what earlier segments already cover with equal bytes; null when some differ.
    private static List<PlacedSegment>? Separate(List<PlacedSegment> coverage, FindingLog log)
    {
        var separate = new List<PlacedSegment>(coverage.Count);
        var whole = new List<PlacedSegment>(coverage.Count);
        var clean = true;
        foreach (var segment in coverage)
        {
            for (var i = separate.Count - 1; i >= 0 && separate[i].End > segment.Offset; i--)
            {
                // What was cut away in front of a segment may have been all that this one meets.
                clean &= separate[i].Offset >= segment.End || Compare(separate[i], whole[i], segment, log);
            }

            var covered = separate.Count == 0 ? 0 : Math.Max(0, separate[^1].End - segment.Offset);
            if (covered < segment.Length)
            {
                whole.Add(segment);
                separate.Add(segment with { Offset = segment.Offset + covered, Bytes = segment.Bytes[(int)covered..] });
            }
        }

        return clean ? separate : null;
    }

    private static bool Compare(PlacedSegment first, PlacedSegment firstWhole, PlacedSegment second, FindingLog log)
    {
        var start = Math.Max(first.Offset, second.Offset);
        var end = Math.Min(first.End, second.End);
        var left = Bytes(first, start, end);
        var right = Bytes(second, start, end);
        var same = left.CommonPrefixLength(right);
        var both = $"{Range(firstWhole)} and {Range(second)}";
        if (same == left.Length)
        {
            log.Add(RomFindings.SameTwice, second.Place, $"{both} both hold 0x{start:X6}-0x{end - 1:X6} of the region `{first.Region}`, with equal bytes.");
            return true;
        }

        log.Add(RomFindings.Overlap, second.Place,
            $"{both} overlap at 0x{start:X6}-0x{end - 1:X6} of the region `{first.Region}`; they first differ at 0x{start + same:X6}: 0x{left[same]:X2} against 0x{right[same]:X2}.");
        return false;
    }

    private static ReadOnlySpan<byte> Bytes(PlacedSegment segment, long start, long end) =>
        segment.Bytes.Span[(int)(start - segment.Offset)..(int)(end - segment.Offset)];

    private static string Range(PlacedSegment segment) => $"{segment.Program} (0x{segment.Offset:X6}-0x{segment.End - 1:X6})";

    // Fresh memory is touched once: programs are copied and only the gaps are filled.
    private static byte[] Place(List<PlacedSegment> coverage, int size, byte fill)
    {
        var bytes = GC.AllocateUninitializedArray<byte>(size);
        var at = 0;
        foreach (var segment in coverage)
        {
            bytes.AsSpan(at, (int)segment.Offset - at).Fill(fill);
            segment.Bytes.Span.CopyTo(bytes.AsSpan((int)segment.Offset));
            at = (int)segment.End;
        }

        bytes.AsSpan(at).Fill(fill);
        return bytes;
    }
}
