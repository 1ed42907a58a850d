using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Decides between reads that are the same every time and reads that vary, and goes on from there.</summary>
internal sealed class VaryingFinder(ProofRequest request, WordImage expected, CancellationToken cancel)
{
    private readonly ImmutableArray<ushort[]> _reads = [.. request.Reads.Select(read => WordImage.ToWords(read.Bytes, request.Shape))];

    public Verdict Find()
    {
        var (consensus, ties) = Readings.Majority(_reads);
        var verdict = _reads.Skip(1).All(read => read.AsSpan().SequenceEqual(_reads[0])) ? Steady() : Varying(consensus);
        var rule = verdict.Faults is [{ Kind: var kind }] && kind == FaultKinds.UnderProgrammed ? "and" : "majority";
        return request.Reads.Length > 1
            ? verdict with { Statistics = Readings.Statistics(request, rule, ties), WordCount = expected.Count, WrongWords = WordCompare.CountDifferences(expected.Words, consensus) }
            : verdict;
    }

    private Verdict Steady()
    {
        var proof = new ProofCase(expected, _reads[0], 0, request, cancel);
        var finder = new StableFinder(proof);
        var found = finder.Find();
        var verdict = FaultFinder.Tell(proof, found, finder.WrongWords);
        return found.Same.IsEmpty && found.Others.IsEmpty && WeakCells.Damaged(expected, _reads[0]) is { } share ? Damaged(verdict, share) : verdict;
    }

    // The same cells after the chip was written again are damaged; before that they may be weakly written.
    private Verdict Damaged(Verdict open, double share)
    {
        var damaged = Fault.Of(FaultKinds.CellsDamaged, FaultParameter.Of("share", share));
        var weak = Fault.Of(FaultKinds.UnderProgrammed, FaultParameter.Of("share", share), FaultParameter.Of("shows", 1));
        var isWrittenAgain = request.Reads.Select(static read => read.Programming).Distinct().Count() > 1;
        var isNamed = _reads.Length > 1;
        return open with
        {
            Faults = isNamed ? [damaged] : [],
            Candidates = isWrittenAgain ? [] : isNamed ? [[weak]] : [[damaged], [weak]],
            Next = isWrittenAgain ? null : LookAlikes.Observation([FaultKinds.CellsDamaged, FaultKinds.UnderProgrammed]),
            Explains = new Shares(1, 1),
        };
    }

    private Verdict Varying(ushort[] consensus)
    {
        if (ContactFinder.Find(request, expected, cancel) is { } contact)
        {
            return contact;
        }

        var set = new ReadSet(expected, _reads, [.. request.Reads.Select(static read => read.Programming)]);
        ImmutableArray<Fault> found =
        [
            .. IdleBus.Busy(set), .. IdleBus.ByChance(set), .. OpenLines.Data(set), .. OpenLines.Shorted(set), .. OpenLines.Address(set),
            .. HastyReads.Late(set), .. HastyReads.Bounce(set), .. WeakCells.UnderProgrammed(set),
        ];
        return found switch
        {
            [] => new NoiseFinder(request, set, consensus, cancel).Find(),
            [var only] => new Verdict(Equal: false, [only], []),
            _ => new Verdict(Equal: false, [], [.. found.Select(static fault => ImmutableArray.Create(fault))]) { Next = LookAlikes.WhenOpen(isSeveral: true) },
        };
    }
}
