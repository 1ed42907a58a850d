using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>A fault that is there in some insertions and not in others.</summary>
internal static class ContactFinder
{
    private const int FewestTelling = 4;

    /// <summary>
    /// The verdict where some insertions read right and others do not: named where these tell one story, open where they do not; null where no insertion reads
    /// right, or the chip was written again between them.
    /// </summary>
    public static Verdict? Find(ProofRequest request, WordImage expected, CancellationToken cancel)
    {
        var insertions = request.Reads.GroupBy(static read => read.Insertion).ToImmutableArray();
        var isWrittenAgain = request.Reads.Select(static read => read.Programming).Distinct().Count() > 1;
        var bad = insertions.Where(reads => reads.Any(read => !read.Bytes.AsSpan().SequenceEqual(request.Expected))).ToImmutableArray();
        if (isWrittenAgain || bad.Length == insertions.Length)
        {
            return null;
        }

        var verdicts = bad.Select(reads => new VaryingFinder(request with { Reads = [.. reads] }, expected, cancel).Find()).ToImmutableArray();
        var stories = verdicts.Select(Wirings).ToImmutableArray();
        var isOne = stories.Zip(verdicts).All(pair => IsOne(pair.First, pair.Second) && IsAlike(pair.First[0], stories[0][0]));
        var numbers = bad.Select(static reads => reads.Key).ToImmutableArray();
        return verdicts[0] with
        {
            Faults = isOne ? [Wrapped(stories[0][0], numbers)] : [],
            Hypothesis = null,
            Candidates = [.. stories[0].Skip(isOne ? 1 : 0).Select(inner => ImmutableArray.Create(Wrapped(inner, numbers)))],
            Next = isOne ? LookAlikes.Observation([.. stories[0].Select(static inner => inner.Kind)]) : LookAlikes.WhenOpen(isSeveral: true),
        };
    }

    // Only what a line does can come and go with an insertion; a file or a cell that would look the same stays.
    private static ImmutableArray<Fault> Wirings(Verdict verdict) =>
        [.. verdict.Candidates.Insert(0, verdict.Faults).Where(static list => list is [{ Kind.Stage: FaultStage.Address or FaultStage.Data }]).Select(static list => list[0])];

    private static bool IsOne(ImmutableArray<Fault> story, Verdict verdict) =>
        !story.IsEmpty && verdict.Explains.All >= 1 && (!verdict.Faults.IsEmpty || (verdict.WrongWords >= FewestTelling && story.Skip(1).All(other => other.Equals(LineFaults.Pulled(story[0])))));

    private static bool IsAlike(Fault left, Fault right) => left.Kind == right.Kind && left.Lines.SequenceEqual(right.Lines);

    private static Fault Wrapped(Fault inner, ImmutableArray<int> badInsertions) =>
        Fault.On(FaultKinds.Contact, inner.Lines, FaultParameter.Of("inner", inner), FaultParameter.Of("badInsertions", badInsertions));
}
