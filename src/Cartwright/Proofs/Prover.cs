using System.Collections.Immutable;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>Holds read-backs of a chip against what it should hold, apart from bytes that may differ.</summary>
public static class Prover
{
    /// <summary>Proves a chip equal, or finds what is wrong.</summary>
    /// <param name="subject">The chip.</param>
    /// <param name="reads">Its read-backs, at least one.</param>
    /// <param name="settings">What is known besides.</param>
    /// <param name="cancel">Ends the search early.</param>
    /// <exception cref="OperationCanceledException">The search was ended.</exception>
    public static ProofResult Prove(ProofSubject subject, ImmutableArray<ReadBack> reads, ProofSettings settings, CancellationToken cancel)
    {
        var masked = subject.MayDiffer.IsEmpty ? reads : [.. reads.Select(read => read with { Bytes = With(read.Bytes, subject.Expected, subject.MayDiffer) })];
        return new ProofResult(subject, reads, Find(subject, reads, masked, settings, cancel), DifferenceMap.Of(subject, masked));
    }

    // What may differ is not known: it is tried as read, which holds for every fault that leaves its place alone, and as built.
    private static Verdict Find(ProofSubject subject, ImmutableArray<ReadBack> reads, ImmutableArray<ReadBack> masked, ProofSettings settings, CancellationToken cancel)
    {
        if (subject.MayDiffer.IsEmpty || masked.All(read => read.Bytes.AsSpan().SequenceEqual(subject.Expected)))
        {
            return FaultFinder.Find(Request(subject, subject.Expected, masked, settings), cancel);
        }

        var asRead = FaultFinder.Find(Request(subject, With(subject.Expected, reads[0].Bytes, subject.MayDiffer), reads, settings), cancel);
        if (!asRead.Faults.IsEmpty)
        {
            return asRead;
        }

        var asBuilt = FaultFinder.Find(Request(subject, subject.Expected, masked, settings), cancel);
        return asBuilt.Faults.IsEmpty && asBuilt.Explains.All <= asRead.Explains.All ? asRead : asBuilt;
    }

    private static ProofRequest Request(ProofSubject subject, byte[] expected, ImmutableArray<ReadBack> reads, ProofSettings settings) =>
        new(expected, subject.Shape, reads)
        {
            World = settings.World,
            OldContent = settings.OldContent,
            OtherSites = subject.OtherSites,
            Releases = settings.Releases,
            OtherChips = settings.OtherChips,
        };

    private static byte[] With(byte[] bytes, byte[] other, ImmutableArray<ByteRange> ranges)
    {
        var mixed = (byte[])bytes.Clone();
        foreach (var range in ranges)
        {
            var end = Math.Min(range.Offset + range.Length, Math.Min(bytes.Length, other.Length));
            if (range.Offset < end)
            {
                other.AsSpan(range.Offset..end).CopyTo(mixed.AsSpan(range.Offset));
            }
        }

        return mixed;
    }
}
