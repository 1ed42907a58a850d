using System.Collections.Immutable;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>What the read-backs of one chip came to.</summary>
/// <param name="Subject">The chip.</param>
/// <param name="Reads">The read-backs.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Differences">Where they differ from what the chip should hold.</param>
public sealed record ProofResult(ProofSubject Subject, ImmutableArray<ReadBack> Reads, Verdict Verdict, DifferenceMap Differences)
{
    // Below it a candidate is no more than the least bad of those tried.
    private const double FewestExplained = 0.9;

    /// <summary>How the reads compare with each other: <c>one read</c>, <c>stable</c>, or <c>varying</c>.</summary>
    public string Stability => Reads.Length == 1 ? "one read" : Reads.Skip(1).All(read => read.Bytes.AsSpan().SequenceEqual(Reads[0].Bytes)) ? "stable" : "varying";

    /// <summary>True when the reads are as long as what the chip should hold, so that they can be compared word by word.</summary>
    public bool IsComparable => Reads.All(read => read.Bytes.Length == Subject.Expected.Length);

    /// <summary>True of an open verdict whose first candidate explains most of the read; else its candidates are only the least bad of those tried.</summary>
    public bool HasCandidates => !Verdict.Candidates.IsEmpty && Verdict.Explains.All > FewestExplained;

    /// <summary>Bytes that were left out of the comparison.</summary>
    public int MaskedBytes => Subject.MayDiffer.Sum(static range => range.Length);
}
