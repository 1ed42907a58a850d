using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.ReadBacks;

/// <summary>Finds what explains a read-back that is the same in every read.</summary>
/// <param name="proof">The image and the read-back.</param>
internal sealed class StableFinder(ProofCase proof)
{
    private const int FewestTelling = 4;
    private const int FewestTellingOfTwo = 16;
    private const int MostCompared = 64;
    private const int MostNear = 4;
    private const uint OtherImageStream = 0x5EED;

    private readonly Samples _samples = Samples.Take(proof.Expected.Words, proof.Read);
    private WordImage? _other;

    /// <summary>Words that read wrong.</summary>
    public int WrongWords => _samples.WrongCount;

    private int Telling => _samples.WrongCount - proof.Tolerance;

    /// <summary>Searches: one cause before two, two before a whole scrambled wiring.</summary>
    public Explanations Find()
    {
        var search = new LineSearch(proof, _samples);
        if (Telling < FewestTelling)
        {
            return Open(search, Explaining(search.Singles().Select(Hypothesis.Of)));
        }

        var models = Wirings(search);
        var wirings = Explaining(models.Select(Hypothesis.Of));
        var simple = Explaining([.. OrderFaults.Propose(proof, _samples), .. ShiftFaults.Propose(proof), .. ContentFaults.Propose(proof), .. PlaceFaults.Propose(proof),
            .. ShiftFaults.Prefixes(proof), .. StatusFaults.Propose(proof), .. BankFaults.Propose(proof, [.. wirings.Select(static row => row.Wiring).OfType<LineModel>()])]);
        if (wirings.Length + simple.Length > 0)
        {
            return Sort(search, [.. wirings, .. PulledLines(wirings), .. BanksGiveWay(wirings, simple)]);
        }

        if (Telling >= FewestTellingOfTwo)
        {
            var pairs = Explaining(search.Pairs().Take(MostCompared).Select(Hypothesis.Of));
            if (!pairs.IsEmpty)
            {
                return Sort(search, pairs);
            }

            var scrambled = Explaining(new WiringSolver(proof, search).Solve().Take(MostCompared).Select(Hypothesis.Of));
            if (!scrambled.IsEmpty)
            {
                return Sort(search, [.. scrambled.DistinctBy(row => row.Fingerprint(Other))]);
            }
        }

        return Open(search, []);
    }

    private List<LineModel> Wirings(LineSearch search) =>
        [.. search.Singles(), .. search.Seldom(), .. ManyLines.Propose(proof, search), .. LineRotations.Propose(proof.Expected.AddressLines, proof.World).Where(search.Survives)];

    // An order of banks is told only where no exchange or inversion of lines explains it.
    private IEnumerable<Hypothesis> BanksGiveWay(ImmutableArray<Hypothesis> wirings, ImmutableArray<Hypothesis> simple)
    {
        var movesWhole = wirings.Where(static row => row.Wiring is { } wiring && wiring.IsExchange).ToList();
        return movesWhole.Count == 0 ? simple
            : simple.Where(row => row.Faults[0].Kind != FaultKinds.BanksReordered || movesWhole.Exists(wiring => IsSame(row, wiring)));
    }

    // A line that is always at one level may as well hang in the air, pulled to it.
    private static IEnumerable<Hypothesis> PulledLines(ImmutableArray<Hypothesis> wirings) =>
        from row in wirings
        where row.Faults.Length == 1 && LineFaults.Pulled(row.Faults[0]) is not null
        select row with { Faults = [LineFaults.Pulled(row.Faults[0])!] };

    private WordImage Other => _other ??= proof.Expected.With(RandomBytes(proof.Expected.Bytes.Length));

    // No pattern, so that nothing that moves or merges words of it leaves it as it was.
    private static byte[] RandomBytes(int length)
    {
        var bytes = new byte[length];
        for (var b = 0; b < length; b++)
        {
            bytes[b] = (byte)Mixing.Of((uint)b, OtherImageStream);
        }

        return bytes;
    }

    private bool IsSame(Hypothesis left, Hypothesis right) => left.Fingerprint(Other) == right.Fingerprint(Other);

    private ImmutableArray<Hypothesis> Explaining(IEnumerable<Hypothesis> hypotheses)
    {
        var explaining = ImmutableArray.CreateBuilder<Hypothesis>();
        foreach (var hypothesis in hypotheses)
        {
            proof.Cancel.ThrowIfCancellationRequested();
            if (hypothesis.Rebuild(proof.Expected) is { } words && words.Length == proof.Read.Length
                && WordCompare.CountDifferences(words, proof.Read) <= proof.Tolerance)
            {
                explaining.Add(hypothesis);
            }
        }

        return explaining.ToImmutable();
    }

    /// <summary>Single causes that explain some of the wrong words.</summary>
    public IEnumerable<Hypothesis> Hinted() => new LineSearch(proof, _samples).Hinted().Select(Hypothesis.Of);

    /// <summary>What of these explains every word, or as many as noise leaves.</summary>
    public Explanations Among(IEnumerable<Hypothesis> hypotheses)
    {
        var search = new LineSearch(proof, _samples);
        var explaining = Explaining(hypotheses);
        return explaining.IsEmpty ? Open(search, []) : Sort(search, [.. explaining, .. PulledLines(explaining)]);
    }

    // Of noisy reads, those explanations that make them about as likely as the best does.
    private ImmutableArray<Hypothesis> Likely(ImmutableArray<Hypothesis> explaining)
    {
        if (proof.Misfit is not { } misfit)
        {
            return explaining;
        }

        var rows = explaining.Select(row => (Row: row, Misfit: misfit(row.Rebuild(proof.Expected)!))).ToImmutableArray();
        var most = rows.Min(static row => row.Misfit) + proof.LeastMargin;
        return [.. rows.Where(row => row.Misfit <= most).Select(static row => row.Row)];
    }

    private Explanations Sort(LineSearch search, ImmutableArray<Hypothesis> explaining)
    {
        var ranked = Likely(explaining).OrderBy(static row => row.Rank).ToImmutableArray();
        if (ranked.Length == 1)
        {
            return new Explanations(ranked, [], Near(search, ranked));
        }

        var first = ranked[0].Fingerprint(Other);
        var alike = ranked.ToLookup(row => row.Fingerprint(Other) == first);
        return new Explanations([.. alike[true]], [.. alike[false]], Near(search, ranked));
    }

    private static Explanations Open(LineSearch search, ImmutableArray<Hypothesis> candidates) => new([], candidates, Near(search, candidates));

    private static ImmutableArray<Hypothesis> Near(LineSearch search, ImmutableArray<Hypothesis> known) =>
        [.. search.Ranked().Select(static row => Hypothesis.Of(row.Model)).Where(row => !known.Any(other => other.Faults.SequenceEqual(row.Faults))).Take(MostNear)];
}
