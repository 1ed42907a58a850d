using System.Collections.Immutable;
using Cartwright.Chips;

namespace Cartwright.Plans;

/// <summary>Works out what has to be erased and programmed so that a chip holds new contents.</summary>
public static class WritePlanner
{
    /// <summary>Plans a rewrite.</summary>
    /// <param name="target">The chip; its map covers it and divides into whole units.</param>
    /// <param name="old">What the chip holds.</param>
    /// <param name="wanted">What it is to hold.</param>
    /// <exception cref="ArgumentException">A length is not that of the map, or a sector is no whole number of units.</exception>
    public static WritePlan Plan(WriteTarget target, ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted)
    {
        Check(target, old, wanted);
        var figures = WriteFigures.Of(target.Part, target.Width);
        var steps = ImmutableArray.CreateBuilder<WriteStep>(target.Map.Sum(static group => group.Count));
        foreach (var (start, length) in SectorGroup.SectorsOf(target.Map))
        {
            steps.Add(Step(target, figures.BurstBytes, start, old.Slice(start, length), wanted.Slice(start, length)));
        }

        return new WritePlan(target, figures, steps.MoveToImmutable(), WholeChip(figures.BurstBytes, target, wanted));
    }

    private static void Check(WriteTarget target, ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted)
    {
        if (old.Length != wanted.Length || SectorGroup.TotalOf(target.Map) != wanted.Length)
        {
            throw new ArgumentException($"The map covers {SectorGroup.TotalOf(target.Map)} bytes, the contents are {old.Length} and {wanted.Length} long.", nameof(target));
        }

        if (target.Map.Any(group => group.Bytes % target.UnitBytes != 0))
        {
            throw new ArgumentException("A sector is no whole number of words.", nameof(target));
        }
    }

    private static WriteStep Step(WriteTarget target, int burst, int start, ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted)
    {
        if (old.SequenceEqual(wanted))
        {
            return new WriteStep(start, old.Length, WriteAction.Keep, 0, 0, 0);
        }

        var changed = CellCompare.CountDifferent(old, wanted, target.UnitBytes);
        return target.Method switch
        {
            WriteMethod.Pages => new WriteStep(start, old.Length, WriteAction.Rewrite, changed, old.Length / target.UnitBytes, 1),
            WriteMethod.InPlace => new WriteStep(start, old.Length, WriteAction.Rewrite, changed, changed, burst > 0 ? 1 : 0),
            _ when CellCompare.MustRise(old, wanted) => new WriteStep(
                start, old.Length, WriteAction.Erase, changed, CellCompare.CountNotErased(wanted, target.UnitBytes), CountNotErasedBursts(wanted, burst)),
            _ => new WriteStep(start, old.Length, WriteAction.Program, changed, changed, CountDifferentBursts(old, wanted, burst)),
        };
    }

    // The same contents written onto a chip that was erased as a whole.
    private static WriteStep WholeChip(int burst, WriteTarget target, ReadOnlySpan<byte> wanted) =>
        new(0, wanted.Length, WriteAction.Erase, 0, CellCompare.CountNotErased(wanted, target.UnitBytes), CountNotErasedBursts(wanted, burst));

    private static int CountNotErasedBursts(ReadOnlySpan<byte> wanted, int burst)
    {
        var count = 0;
        for (var at = 0; burst > 0 && at < wanted.Length; at += burst)
        {
            count += wanted.Slice(at, Math.Min(burst, wanted.Length - at)).ContainsAnyExcept(CellCompare.Erased) ? 1 : 0;
        }

        return count;
    }

    private static int CountDifferentBursts(ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted, int burst)
    {
        var count = 0;
        for (var at = 0; burst > 0 && at < wanted.Length; at += burst)
        {
            var length = Math.Min(burst, wanted.Length - at);
            count += old.Slice(at, length).SequenceEqual(wanted.Slice(at, length)) ? 0 : 1;
        }

        return count;
    }
}
