using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Grades answers by rebuilding the read-back from the faults they name.</summary>
internal static class Judge
{
    public static Grade Of(Trial drawn, ImmutableArray<byte[]> reads, Answer answer)
    {
        var trial = Showing(drawn);
        var isEqual = reads.All(read => read.AsSpan().SequenceEqual(trial.Image));
        if (isEqual || answer.Equal)
            return isEqual == answer.Equal && answer.Faults.IsEmpty ? Grade.Right : Grade.Wrong;

        if (!answer.Faults.IsEmpty)
            return Named(trial, reads, answer);

        var mentioned = answer.Candidates.Any(candidate => IsSame(trial, reads, candidate));
        return trial.MustStayOpen || (mentioned && MayStayOpen(trial, reads, answer)) ? Grade.Right : mentioned ? Grade.OpenWithCandidate : Grade.Open;
    }

    private static Grade Named(Trial trial, ImmutableArray<byte[]> reads, Answer answer)
    {
        if (!IsSame(trial, reads, answer.Faults))
            return Grade.Wrong;

        var told = answer.Candidates.Add(answer.Faults).SelectMany(static list => list).Select(static fault => fault.Kind).ToHashSet(StringComparer.Ordinal);
        return trial.LookAlikes.Length > 0 && (answer.Next is null || !trial.LookAlikes.All(told.Contains)) ? Grade.Incomplete
            : trial.SeeksOthers && OtherFaults.Explain(trial, reads[0]) ? Grade.Lucky
            : Grade.Right;
    }

    // The image cannot tell: too few words do, or something else leaves the very same reads.
    private static bool MayStayOpen(Trial trial, ImmutableArray<byte[]> reads, Answer answer) =>
        (trial.SeeksOthers && (TellingWords(trial) < trial.FewWords || OtherFaults.Explain(trial, reads[0])))
        || answer.Candidates.Any(other => RebuildsWithoutNoise(trial, reads, other) && !Equivalence.OnUniqueWords(trial, other));

    private static bool RebuildsWithoutNoise(Trial trial, ImmutableArray<byte[]> reads, ImmutableArray<Fault> other)
    {
        var clean = trial with { Faults = Equivalence.WithoutNoise(trial.Faults) };
        return Equivalence.Rebuilds(clean, clean.Faults.Length == trial.Faults.Length ? reads : clean.Reads, Equivalence.WithoutNoise(other));
    }

    // Where the image hides the fault, the noise over it is all that is wrong.
    private static Trial Showing(Trial trial)
    {
        var clean = Equivalence.WithoutNoise(trial.Faults);
        return clean.Length < trial.Faults.Length && new Simulation(trial.Bench, trial.Image, clean).Read(trial.Readings[0]).AsSpan().SequenceEqual(trial.Image)
            ? trial with { Faults = [.. trial.Faults.Where(static fault => fault.Kind == "random-noise")] }
            : trial;
    }

    private static int TellingWords(Trial trial)
    {
        var read = new Simulation(trial.Bench, trial.Image, Equivalence.WithoutNoise(trial.Faults)).Read(trial.Readings[0]);
        return trial.Bench.Shape.ToWords(read).Zip(trial.Bench.Shape.ToWords(trial.Image)).Count(static pair => pair.First != pair.Second);
    }

    private static bool IsSame(Trial trial, ImmutableArray<byte[]> reads, ImmutableArray<Fault> named) =>
        Equivalence.OnUniqueWords(trial, named) || Equivalence.OnThisImage(trial, reads, named);
}
