using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which several lines have the same fault.</summary>
internal static class ManyLines
{
    private const int MostStuck = 6;

    public static IEnumerable<LineModel> Propose(ProofCase proof, LineSearch search) =>
        InvertedAddress(proof).Concat(InvertedData(proof)).Concat(StuckData(proof)).Concat(StuckAddress(proof)).Where(search.Survives);

    // Two lines, or more of them at one level, as one cause holds them; anything else is too much to name.
    private static IEnumerable<LineModel> StuckData(ProofCase proof)
    {
        var (always, ever) = WordCompare.Bits(proof.Read);
        var (expectedAlways, expectedEver) = WordCompare.Bits(proof.Expected.Words);
        var ops = Enumerable.Range(0, proof.Expected.Shape.Width)
            .Where(i => ((always | ~ever) >> i & 1) != 0 && ((expectedAlways | ~expectedEver) >> i & 1) == 0)
            .Select(i => LineOp.Lines((always >> i & 1) != 0 ? LineOpKind.StuckHigh : LineOpKind.StuckLow, 1u << i))
            .ToImmutableArray();
        return ops.Length == 2 || (ops.Length > 2 && ops.All(op => op.Kind == ops[0].Kind)) ? [new LineModel([], ops, proof.World)] : [];
    }

    private static IEnumerable<LineModel> StuckAddress(ProofCase proof)
    {
        var dead = DeadLines.Address(proof.Read, proof.Expected.AddressLines).Except(DeadLines.Address(proof.Expected.Words, proof.Expected.AddressLines)).ToImmutableArray();
        return dead.Length is > 1 and <= MostStuck
            ? Enumerable.Range(0, 1 << dead.Length).Select(levels => new LineModel(
                [.. dead.Select((line, i) => LineOp.Lines((levels >> i & 1) != 0 ? LineOpKind.StuckHigh : LineOpKind.StuckLow, 1u << line))], [], proof.World))
            : [];
    }

    private static IEnumerable<LineModel> InvertedData(ProofCase proof)
    {
        var mask = proof.Read[0] ^ proof.Expected.Words[0];
        return System.Numerics.BitOperations.PopCount((uint)mask) > 1 ? [new LineModel([], [LineOp.Lines(LineOpKind.Inverted, (uint)mask)], proof.World)] : [];
    }

    // Where a line is inverted, the words that had it at one have it at zero.
    private static IEnumerable<LineModel> InvertedAddress(ProofCase proof)
    {
        var lines = proof.Expected.AddressLines;
        if (proof.Expected.Count != 1 << lines)
        {
            return [];
        }

        var expected = LineCounts.Of(proof.Expected.Words, proof.Expected.Shape.Width, lines);
        var read = LineCounts.Of(proof.Read, proof.Expected.Shape.Width, lines);
        var mask = 0u;
        for (var k = 0; k < lines; k++)
        {
            for (var i = 0; i < expected.Ones.Length; i++)
            {
                var (straight, inverted) = (expected.Joint[i][k], expected.Ones[i] - expected.Joint[i][k]);
                mask |= Math.Abs(read.Joint[i][k] - inverted) < Math.Abs(read.Joint[i][k] - straight) ? 1u << k : 0;
            }
        }

        return System.Numerics.BitOperations.PopCount(mask) > 1 ? [new LineModel([LineOp.Lines(LineOpKind.Inverted, mask)], [], proof.World)] : [];
    }
}
