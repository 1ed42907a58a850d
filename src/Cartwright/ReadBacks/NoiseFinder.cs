using System.Collections.Immutable;
using System.Numerics;

namespace Cartwright.ReadBacks;

/// <summary>Finds what is wrong under random bit errors: by the consensus of the reads, and by how likely each explanation makes all of them.</summary>
internal sealed class NoiseFinder(ProofRequest request, ReadSet set, ushort[] consensus, CancellationToken cancel)
{
    private const double MostNoise = 0.07;
    private const int FewestErrors = 12;
    private const int FewestTelling = 16;
    private const int FewWrong = 64;
    private const double Deviations = 6;
    private const int Few = 3;

    // Logarithms of how much likelier one explanation is than another.
    private const double Surely = 25;
    private const double Doubtful = 7;

    private readonly WordImage _expected = set.Expected;
    private readonly double _rate = Readings.Statistics(request, "majority", 0).ErrorRate;

    public Verdict Find()
    {
        var wrong = WordCompare.CountDifferences(_expected.Words, consensus);
        if (_rate is 0 or > MostNoise)
        {
            return Open(_rate > 0 ? [[Noise]] : []);
        }

        var tolerance = Tolerance();
        var proof = new ProofCase(_expected, consensus, tolerance, request, cancel) { Misfit = Misfit, LeastMargin = (long)Math.Ceiling(Surely / Cost) };
        var finder = new StableFinder(proof);
        return wrong > tolerance + FewWrong ? Named(proof, finder.Find(), wrong) : Little(proof, finder, wrong);
    }

    private Fault Noise => Fault.Of(FaultKinds.RandomNoise, FaultParameter.Of("rate", _rate));

    private double Cost => Math.Log((1 - _rate) / _rate);

    // Few words are wrong in the consensus: noise alone, or a fault that this image hardly shows.
    private Verdict Little(ProofCase proof, StableFinder finder, int wrong)
    {
        var own = wrong <= proof.Tolerance ? Misfit(_expected.Words) : long.MaxValue;
        var others = finder.Among(finder.Hinted().Where(TellsAny));
        var best = others.Same.Concat(others.Others).Select(row => Misfit(row.Rebuild(_expected)!)).DefaultIfEmpty(long.MaxValue).Min();
        if (own != long.MaxValue && (best == long.MaxValue || (best - own) * Cost > Doubtful))
        {
            return IsNoise(_expected.Words) ? new Verdict(Equal: false, [Noise], []) : Open([[Noise]]);
        }

        return own == long.MaxValue || (own - best) * Cost >= Surely ? Named(proof, others, wrong) : Open([.. others.Same.Concat(others.Others).Select(WithNoise), [Noise]]);
    }

    private bool TellsAny(Hypothesis row) => row.Rebuild(_expected) is { } words && WordCompare.CountDifferences(words, _expected.Words) > 0;

    private Verdict Named(ProofCase proof, Explanations found, int wrong)
    {
        var verdict = FaultFinder.Tell(proof, found, wrong);
        var isNamed = found.IsOne && found.Same[0].Rebuild(_expected) is { } words
            && WordCompare.CountDifferences(words, _expected.Words) >= FewestTelling && IsNoise(words);
        return verdict with
        {
            Faults = isNamed ? [.. verdict.Faults, Noise] : [],
            Hypothesis = isNamed ? verdict.Hypothesis : null,
            Candidates = [.. (isNamed || verdict.Faults.IsEmpty ? verdict.Candidates : verdict.Candidates.Insert(0, verdict.Faults)).Select(list => list.Add(Noise))],
            Next = isNamed ? verdict.Next : verdict.Next ?? LookAlikes.WhenOpen(isSeveral: false),
        };
    }

    private ImmutableArray<Fault> WithNoise(Hypothesis row) => row.Faults.Add(Noise);

    private static Verdict Open(ImmutableArray<ImmutableArray<Fault>> candidates) =>
        new(Equal: false, [], candidates) { Next = LookAlikes.WhenOpen(isSeveral: false), Explains = default };

    /// <summary>Bits of all reads that are not as these words have them.</summary>
    private long Misfit(ushort[] words)
    {
        var misfit = 0L;
        foreach (var read in set.Reads)
        {
            for (var a = 0; a < read.Length; a++)
            {
                misfit += BitOperations.PopCount((uint)(read[a] ^ words[a]));
            }
        }

        return misfit;
    }

    private bool IsNoise(ushort[] words) =>
        Misfit(words) >= FewestErrors
        && Scatter.IsEven(words, _expected.Shape, _expected.AddressLines, zerosOnly: false, [.. set.Reads.Select(read => ReadSet.Differences(read, words))]);

    // Words of the consensus that noise alone spoils, with room for chance.
    private int Tolerance()
    {
        var reads = set.Reads.Length;
        var bit = 0.0;
        for (var wrong = reads; 2 * wrong >= reads; wrong--)
        {
            var share = Choose(reads, wrong) * Math.Pow(_rate, wrong) * Math.Pow(1 - _rate, reads - wrong);
            bit += 2 * wrong == reads ? share / 2 : share;
        }

        var words = _expected.Count * (1 - Math.Pow(1 - bit, _expected.Shape.Width));
        return (int)(words + (Deviations * Math.Sqrt(words)) + Few);
    }

    private static double Choose(int all, int some)
    {
        var ways = 1.0;
        for (var i = 1; i <= some; i++)
        {
            ways = ways * (all - some + i) / i;
        }

        return ways;
    }
}
