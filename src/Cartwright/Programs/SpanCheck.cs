using Cartwright.Findings;

namespace Cartwright.Programs;

/// <summary>Refuses a file whose addresses lie absurdly far apart, and names the bytes that stand alone.</summary>
internal static class SpanCheck
{
    /// <summary>Logs an error when the pieces span more than allowed.</summary>
    /// <param name="pieces">Ascending runs that do not overlap, at least one.</param>
    /// <param name="largestSpan">Most bytes from the lowest to the highest address.</param>
    /// <param name="placeOf">Where in the file a byte of the store stands.</param>
    /// <param name="log">Where the error goes.</param>
    public static void Run(List<ProgramRun> pieces, long largestSpan, Func<int, SourcePlace> placeOf, ReaderLog log)
    {
        var span = pieces[^1].End - pieces[0].Address;
        if (span <= largestSpan) return;
        var limit = $"at most {ProgramWords.Size(largestSpan)} from the lowest to the highest address";
        if (pieces.Count == 1)
        {
            log.Add(ProgramFindings.SpanTooLarge, placeOf(pieces[0].Start), $"The file covers {ProgramWords.Size(span)} from {ProgramWords.Address(pieces[0].Address)} on.", limit);
            return;
        }

        var above = FirstAboveWidestGap(pieces);
        var isStrayAbove = CountBytes(pieces, above, pieces.Count) <= CountBytes(pieces, 0, above);
        var (stray, rest) = isStrayAbove ? (above, 0) : (0, above);
        var restEnd = isStrayAbove ? pieces[above - 1].End : pieces[^1].End;
        log.Add(
            ProgramFindings.SpanTooLarge,
            placeOf(pieces[stray].Start),
            $"The bytes at {ProgramWords.Address(pieces[stray].Address)} ({ProgramWords.Where(placeOf(pieces[stray].Start))}) stand far from the rest at {ProgramWords.Range(pieces[rest].Address, restEnd)} (from {ProgramWords.Where(placeOf(pieces[rest].Start))} on): the file would span {ProgramWords.Size(span)}.",
            limit);
    }

    private static int FirstAboveWidestGap(List<ProgramRun> pieces)
    {
        var (widest, above) = (-1L, 1);
        for (var i = 1; i < pieces.Count; i++)
        {
            var gap = pieces[i].Address - pieces[i - 1].End;
            if (gap > widest) (widest, above) = (gap, i);
        }

        return above;
    }

    private static long CountBytes(List<ProgramRun> pieces, int first, int next)
    {
        var count = 0L;
        for (var i = first; i < next; i++) count += pieces[i].Length;
        return count;
    }
}
