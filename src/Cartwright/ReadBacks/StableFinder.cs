using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.ReadBacks;

/// <summary>Finds what explains a read-back that is the same in every read.</summary>
/// <param name="proof">The image and the read-back.</param>
internal sealed class StableFinder(ProofCase proof)
{
    private const int FewestTelling = 4;
    private const int FewestTellingOfTwo = 16;
    private const int FewestTellingInNoise = 16;
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
        var enough = proof.Tolerance == 0 ? FewestTelling : FewestTellingInNoise;
        if (Telling < enough)
        {
            return Open(search, Explaining(search.Singles().Select(Hypothesis.Of)));
        }

        var simple = Explaining([.. search.Singles().Select(Hypothesis.Of), .. search.Seldom().Select(Hypothesis.Of), .. ManyLines.Propose(proof, search).Select(Hypothesis.Of),
            .. OrderFaults.Propose(proof, _samples), .. ShiftFaults.Propose(proof), .. ContentFaults.Propose(proof)]);
        var flexible = Explaining([.. BankFaults.Propose(proof), .. PlaceFaults.Propose(proof), .. ShiftFaults.Prefixes(proof), .. StatusFaults.Propose(proof)]);
        if (simple.Length + flexible.Length > 0)
        {
            return simple.IsEmpty ? Sort(search, flexible) : Sort(search, [.. simple, .. flexible.Where(row => simple.Any(other => IsSame(row, other)))]);
        }

        if (Telling >= FewestTellingOfTwo)
        {
            var pairs = Explaining(search.Pairs().Take(MostCompared).Select(Hypothesis.Of));
            if (!pairs.IsEmpty)
            {
                return Sort(search, pairs);
            }

            var wirings = Explaining(new WiringSolver(proof, search).Solve().Take(MostCompared).Select(Hypothesis.Of));
            if (!wirings.IsEmpty)
            {
                return Sort(search, [.. wirings.DistinctBy(row => row.Fingerprint(Other))]);
            }
        }

        return Open(search, []);
    }

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

    private Explanations Sort(LineSearch search, ImmutableArray<Hypothesis> explaining)
    {
        var ranked = explaining.OrderBy(static row => row.Rank).ToImmutableArray();
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
