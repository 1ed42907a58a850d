using System.Collections.Immutable;
using System.Numerics;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>Finds lines that are named more than once: across units that points at the board, across chips at what they share.</summary>
public static class SharedLines
{
    /// <summary>Lines that are named in several units.</summary>
    /// <param name="units">The units.</param>
    public static ImmutableArray<SharedLine> AcrossUnits(ImmutableArray<UnitProof> units)
    {
        var named = units.SelectMany(static unit => Named(unit).Select(row => (Unit: unit.Name ?? "", row.Site, row.Line))).ToImmutableArray();
        var faulty = named.Select(static row => row.Unit).Distinct().Count();
        var lines = units.IsEmpty ? 0 : units[0].Chips.Sum(static chip => LinesOf(chip.Subject));
        return
        [
            .. named.GroupBy(static row => (row.Site, row.Line))
                .Select(group => new SharedLine(group.Key.Line, group.Key.Site, [.. group.Select(static row => row.Unit).Distinct()], faulty, Chance(faulty, group.Count(), lines)))
                .Where(static shared => shared.Where.Length > 1)
                .OrderByDescending(static shared => shared.Where.Length),
        ];
    }

    /// <summary>Lines of the bus that are named at several chips of one unit.</summary>
    /// <param name="unit">The unit.</param>
    public static ImmutableArray<SharedLine> AcrossChips(UnitProof unit) =>
    [
        .. unit.Chips
            .SelectMany(static chip => chip.Verdict.Faults.SelectMany(static fault => fault.Lines).Distinct().Select(line => (chip.Subject.Site, Line: chip.Subject.Lines.Of(line).Bus)))
            .Where(static row => row.Line is not null)
            .GroupBy(static row => row.Line!)
            .Where(static group => group.Count() > 1)
            .Select(group => new SharedLine(group.Key, null, [.. group.Select(static row => row.Site)], unit.Chips.Length, 1.0 / LinesOf(unit.Chips[0].Subject))),
    ];

    private static IEnumerable<(string Site, string Line)> Named(UnitProof unit) =>
        unit.Chips.SelectMany(static chip => chip.Verdict.Faults.Where(static fault => fault.Kind.Stage is FaultStage.Address or FaultStage.Data)
            .SelectMany(static fault => fault.Lines).Distinct().Select(line => (chip.Subject.Site, chip.Subject.Lines.Of(line).Chip)));

    private static int LinesOf(ProofSubject subject) => subject.Shape.Width + BitOperations.Log2((uint)Math.Max(1, subject.Expected.Length / subject.Shape.Bytes));

    // Each of the faulty units has one of the lines at random: ways to choose those that share, times the chance that they all have the first one's.
    private static double Chance(int faulty, int sharing, int lines)
    {
        var ways = 1.0;
        for (var i = 0; i < sharing; i++)
        {
            ways *= (double)(faulty - i) / (i + 1);
        }

        return lines < 2 ? 1 : Math.Min(1, ways / Math.Pow(lines, sharing - 1));
    }
}
