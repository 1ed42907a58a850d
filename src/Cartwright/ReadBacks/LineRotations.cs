using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Address lines that all moved on by one or two: what bytes or words that were interleaved once too often, or not at all, look like.</summary>
internal static class LineRotations
{
    private static readonly ImmutableArray<int> Steps = [1, 2];

    public static IEnumerable<LineModel> Propose(int lines, WritingWorld world) =>
        from step in Steps.SelectMany(step => new[] { step, lines - step }).Distinct()
        where step > 0 && step < lines
        select new LineModel([LineOp.Of(new LineMap([.. Enumerable.Range(0, lines).Select(k => (k + step) % lines)]))], [], world);
}
