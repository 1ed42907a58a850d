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
    /// <summary>How the reads compare with each other: <c>one read</c>, <c>stable</c>, or <c>varying</c>.</summary>
    public string Stability => Reads.Length == 1 ? "one read" : Reads.Skip(1).All(read => read.Bytes.AsSpan().SequenceEqual(Reads[0].Bytes)) ? "stable" : "varying";

    /// <summary>Bytes that were left out of the comparison.</summary>
    public int MaskedBytes => Subject.MayDiffer.Sum(static range => range.Length);
}
