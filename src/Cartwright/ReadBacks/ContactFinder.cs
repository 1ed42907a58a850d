using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>A fault that is there in some insertions and not in others.</summary>
internal static class ContactFinder
{
    /// <summary>The verdict where insertions differ and reads within each tell one story; null where this is not so.</summary>
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
        var first = verdicts[0];
        var numbers = bad.Select(static reads => reads.Key).ToImmutableArray();
        if (!verdicts.All(verdict => verdict.Faults is [var inner] && IsWiring(inner) && inner.Kind == first.Faults[0].Kind && inner.Lines.SequenceEqual(first.Faults[0].Lines)))
        {
            return null;
        }

        return first with
        {
            Faults = [Wrapped(first.Faults[0], numbers)],
            Candidates = [.. first.Candidates.Where(static list => list is [var inner] && IsWiring(inner)).Select(list => ImmutableArray.Create(Wrapped(list[0], numbers)))],
        };
    }

    private static bool IsWiring(Fault fault) => fault.Kind.Stage is FaultStage.Address or FaultStage.Data;

    private static Fault Wrapped(Fault inner, ImmutableArray<int> badInsertions) =>
        Fault.On(FaultKinds.Contact, inner.Lines, FaultParameter.Of("inner", inner), FaultParameter.Of("badInsertions", badInsertions));
}
