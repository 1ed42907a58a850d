using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>What a comparison of read-backs with the expected image came to.</summary>
/// <param name="Equal">True when every word of every read is as expected.</param>
/// <param name="Faults">What is wrong, in the order of the signal; empty when equal, and when it is left open.</param>
/// <param name="Candidates">Other explanations that the reads do not rule out; of an open verdict all that are left.</param>
public sealed record Verdict(bool Equal, ImmutableArray<Fault> Faults, ImmutableArray<ImmutableArray<Fault>> Candidates)
{
    /// <summary>What the named faults explain; of an open verdict what the best candidate does.</summary>
    public Shares Explains { get; init; } = new(1, 1);

    /// <summary>The best explanation after the named one; empty when there is none.</summary>
    public ImmutableArray<Fault> RunnerUp { get; init; } = [];

    /// <summary>What the runner-up explains.</summary>
    public Shares RunnerUpExplains { get; init; }

    /// <summary>The one observation that would decide, a sentence; null when nothing is left to decide.</summary>
    public string? Next { get; init; }

    /// <summary>How several reads compare.</summary>
    public ReadStatistics? Statistics { get; init; }

    /// <summary>Words of the image, and how many read wrong (in the consensus of the reads).</summary>
    public int WordCount { get; init; }

    /// <summary>Words that read wrong, in the consensus of the reads.</summary>
    public int WrongWords { get; init; }

    /// <summary>The named explanation, to be tried on other images; null when nothing is named.</summary>
    internal Hypothesis? Hypothesis { get; init; }

    /// <summary>True when something is wrong and no single explanation is left.</summary>
    public bool IsOpen => !Equal && Faults.IsEmpty;
}
