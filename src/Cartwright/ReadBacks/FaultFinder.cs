namespace Cartwright.ReadBacks;

/// <summary>Compares read-backs with the image a chip should hold, and finds what explains the difference.</summary>
public static class FaultFinder
{
    /// <summary>Finds what is wrong.</summary>
    /// <param name="request">The image, the read-backs, and what is known around them.</param>
    /// <param name="cancel">Ends the search early.</param>
    /// <returns>The verdict. A fault is named only when the read-back rebuilt from it is the one that was read, word by word, and no other explanation is left.</returns>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static Verdict Find(ProofRequest request, CancellationToken cancel = default)
    {
        var expected = new WordImage(request.Expected, request.Shape);
        return request.Reads.All(read => read.Bytes.AsSpan().SequenceEqual(request.Expected))
            ? new Verdict(Equal: true, [], []) { WordCount = expected.Count, Statistics = request.Reads.Length > 1 ? Readings.Statistics(request, "majority", 0) : null }
            : request.Reads.Any(read => read.Bytes.Length != request.Expected.Length) ? OtherLength.Find(request, expected)
            : new VaryingFinder(request, expected, cancel).Find();
    }

    /// <summary>The verdict on a search of one stable read-back.</summary>
    internal static Verdict Tell(ProofCase proof, Explanations found, int wrongWords)
    {
        var named = found.IsOne ? found.Same[0] : null;
        var candidates = found.IsOne ? found.Same.Skip(1) : found.Same.Concat(found.Others).Concat(found.Same.IsEmpty && found.Others.IsEmpty ? found.Near : []);
        var runner = found.IsOne ? found.Near.FirstOrDefault() : null;
        return new Verdict(Equal: false, named?.Faults ?? [], [.. candidates.Select(static row => row.Faults)])
        {
            Hypothesis = named,
            Explains = ShareOf(proof, named ?? found.Same.Concat(found.Others).Concat(found.Near).FirstOrDefault()),
            RunnerUp = runner?.Faults ?? [],
            RunnerUpExplains = ShareOf(proof, runner),
            Next = found.IsOne
                ? LookAlikes.Observation([.. found.Same.Select(static row => row.Faults[^1].Kind)])
                : LookAlikes.WhenOpen(found.Same.Length + found.Others.Length > 1),
            WordCount = proof.Expected.Count,
            WrongWords = wrongWords,
        };
    }

    private static Shares ShareOf(ProofCase proof, Hypothesis? hypothesis) =>
        hypothesis?.Rebuild(proof.Expected) is { } words ? Shares.Of(proof.Expected.Words, words, proof.Read) : default;
}
