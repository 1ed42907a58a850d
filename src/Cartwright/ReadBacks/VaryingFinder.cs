using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Decides between reads that are the same every time and reads that vary, and goes on from there.</summary>
internal sealed class VaryingFinder(ProofRequest request, WordImage expected, CancellationToken cancel)
{
    private readonly ImmutableArray<ushort[]> _reads = [.. request.Reads.Select(read => WordImage.ToWords(read.Bytes, request.Shape))];

    public Verdict Find()
    {
        var (words, ties) = Readings.Majority(_reads);
        var verdict = Stable(words, 0);
        return request.Reads.Length > 1 ? verdict with { Statistics = Readings.Statistics(request, "majority", ties) } : verdict;
    }

    private Verdict Stable(ushort[] words, int tolerance)
    {
        var proof = new ProofCase(expected, words, tolerance, request, cancel);
        var finder = new StableFinder(proof);
        return FaultFinder.Tell(proof, finder.Find(), finder.WrongWords);
    }
}
