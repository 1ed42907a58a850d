using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Plans;

/// <summary>What a plan shows about the places of things that change.</summary>
internal static class SectorAdvice
{
    // An area is small when it fills no more of its sector than a quarter.
    private const int SmallPart = 4;

    // In bytes: changes this near each other across a boundary are taken for one area.
    private const int Near = 16;

    private const int MostNamed = 3;

    /// <summary>Tells what could be placed better, one finding a kind.</summary>
    public static void Tell(WritePlan plan, ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted, SourcePlace place, FindingLog log)
    {
        if (plan.Target.Method != WriteMethod.Sectors)
        {
            return;
        }

        var (shared, across) = (new List<string>(), new List<string>());
        var before = default((int First, int Last, int Length)?);
        foreach (var step in plan.Steps)
        {
            if (step.Action != WriteAction.Erase)
            {
                before = null;
                continue;
            }

            var (first, last) = Changed(step, old, wanted);
            if (before is { } other && first - other.Last <= Near && last + 1 - other.First <= other.Length)
            {
                across.Add($"{Number.Hex(other.First, 6)}-{Number.Hex(last, 6)}");
            }
            else if ((last + 1 - first) * (long)SmallPart <= step.Length && HoldsMore(step, first, last, wanted))
            {
                shared.Add($"{Number.Hex(first, 6)}-{Number.Hex(last, 6)} in the sector of {ByteSize.Words(step.Length)} at {Number.Hex(step.Start, 6)}");
            }

            before = (first, last, step.Length);
        }

        Tell(PlanFindings.SharedSector, "sector is erased for a small area", "sectors are erased for small areas", shared, place, log);
        Tell(PlanFindings.AcrossBoundary, "small area lies across a sector boundary", "small areas lie across sector boundaries", across, place, log);
    }

    private static void Tell(FindingRule rule, string one, string many, List<string> places, SourcePlace place, FindingLog log)
    {
        if (places.Count > 0)
        {
            var more = places.Count > MostNamed ? string.Create(CultureInfo.InvariantCulture, $", and {places.Count - MostNamed} more") : "";
            log.Add(rule, place, string.Create(CultureInfo.InvariantCulture, $"{places.Count} {(places.Count == 1 ? one : many)}: {string.Join("; ", places.Take(MostNamed))}{more}."));
        }
    }

    private static (int First, int Last) Changed(WriteStep step, ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted)
    {
        var held = old.Slice(step.Start, step.Length);
        var target = wanted.Slice(step.Start, step.Length);
        var first = held.CommonPrefixLength(target);
        var last = step.Length - 1;
        while (held[last] == target[last])
        {
            last--;
        }

        return (step.Start + first, step.Start + last);
    }

    private static bool HoldsMore(WriteStep step, int first, int last, ReadOnlySpan<byte> wanted) =>
        wanted[step.Start..first].ContainsAnyExcept(CellCompare.Erased) || wanted[(last + 1)..step.End].ContainsAnyExcept(CellCompare.Erased);
}
