using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Slots;

/// <summary>Works out what every position of the switches shows. An open switch with a pull-up is high, so that all switches open show the end of the image, not its start.</summary>
/// <param name="slots">The slots.</param>
/// <param name="regions">The platform's regions, the first of them for switches that name none.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class SwitchTable(ImmutableArray<PlacedSlot> slots, ImmutableArray<string> regions, FindingLog log)
{
    // More positions than anybody sets by hand.
    private const int MostSwitches = 6;

    /// <summary>Every position, all switches open first.</summary>
    public ImmutableArray<SwitchPosition> Positions(ImmutableArray<SlotSwitch> switches)
    {
        if (switches.IsEmpty || !Check(switches))
        {
            return [];
        }

        var count = switches[0].Lines.Length;
        return [.. Enumerable.Range(0, 1 << count).Select(position => Position(switches, [.. Enumerable.Range(0, count).Select(index => ((position >> index) & 1) == 0)]))];
    }

    /// <summary>Tells of games that no position starts.</summary>
    public void CheckReach(ImmutableArray<SwitchPosition> positions, ImmutableArray<SlotGame> games)
    {
        foreach (var game in games.Where(game => positions.All(position => position.Title != game.Title)))
        {
            log.Add(SlotFindings.NoPosition, game.Place, $"No position of the switches starts `{game.Title}`.");
        }
    }

    private bool Check(ImmutableArray<SlotSwitch> switches)
    {
        var clean = true;
        foreach (var row in switches)
        {
            if (row.Lines.Length is 0 or > MostSwitches || row.Lines.Length != switches[0].Lines.Length)
            {
                log.Add(ManifestFindings.BadValue, row.Place, $"There are {row.Lines.Length} switches for the region `{NameOf(row)}`.", $"1 to {MostSwitches}, as many for each region");
                clean = false;
            }

            var own = slots.Where(slot => Same(slot.Region, NameOf(row))).Select(static slot => slot.End).DefaultIfEmpty().Max();
            foreach (var line in row.Lines.Where(line => 1L << line >= own))
            {
                log.Add(SlotFindings.LineOutside, row.Place, $"A{line} chooses from {Number.Hex(1L << line, 6)} on, and the slots of the region `{NameOf(row)}` end at {Number.Hex(own, 6)}.");
                clean = false;
            }
        }

        return clean;
    }

    private SwitchPosition Position(ImmutableArray<SlotSwitch> switches, ImmutableArray<bool> isHigh)
    {
        var shown = switches.Select(row => Shown(row, isHigh)).Distinct().ToList();
        if (shown.Count(static row => row.Starts) > 1)
        {
            log.Add(SlotFindings.Mixed, switches[0].Place, $"A position of the switches shows {string.Join(" and ", shown.Select(static row => row.Text))}.");
        }

        return new SwitchPosition(isHigh, shown is [{ Starts: true } only] ? only.Text : null, string.Join(" and ", shown.Select(static row => row.Text)));
    }

    private (string Text, bool Starts) Shown(SlotSwitch row, ImmutableArray<bool> isHigh)
    {
        var start = row.Lines.Select((line, index) => isHigh[index] ? 1L << line : 0).Sum();
        var slot = slots.FirstOrDefault(slot => Same(slot.Region, NameOf(row)) && slot.Start <= start && start < slot.End);
        return slot is null ? ("nothing", false) : slot.Start == start ? (slot.Title, true) : ($"the inside of {slot.Title}", false);
    }

    private string NameOf(SlotSwitch row) => row.Region?.Text ?? regions[0];

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
