using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Plans;

/// <summary>Makes a plan from what a user gave, with findings for whatever stands against it.</summary>
public static class PlanChecks
{
    private const int NarrowWidth = 8;
    private const int WideWidth = 16;

    /// <summary>The chip of a part; null, and a finding, when it is not known well enough to plan for.</summary>
    /// <param name="part">The part.</param>
    /// <param name="name">The name the user wrote: it may say T or B.</param>
    /// <param name="options">What else the user says.</param>
    /// <param name="place">Where the user named the part.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static WriteTarget? Target(Part part, string name, PlanOptions options, SourcePlace place, FindingLog log)
    {
        if (part.Kind == PartKind.Sram)
        {
            log.Add(PlanFindings.NotWritten, place, $"{part.Name} is static RAM.");
            return null;
        }

        var width = options.Width ?? OwnWidth(part);
        if (options.Width is { } asked && !part.Supports(asked))
        {
            log.Add(PlanFindings.WrongWidth, place, string.Create(CultureInfo.InvariantCulture, $"{part.Name} has not {asked} data lines to use."), PartWords.DataBuses.Print(part.DataBus));
            return null;
        }

        var end = options.End ?? PartVariant.EndOf(part, name);
        var map = options.Map.IsEmpty ? PartVariant.MapOf(part, end) : options.Map;
        var target = WriteTarget.Of(part, map, width);
        return target.Map.IsEmpty ? Unknown(part, end, place, log)
            : !options.Map.IsEmpty ? CheckStated(target, options.Map, place, log)
            : Warned(target, end, place, log);
    }

    /// <summary>Plans a rewrite; null, and a finding, when the contents are not as long as the chip.</summary>
    /// <param name="target">The chip.</param>
    /// <param name="old">What it holds; null for a blank chip.</param>
    /// <param name="wanted">What it is to hold.</param>
    /// <param name="log">Receives what is wrong, and what could be better.</param>
    public static WritePlan? Plan(WriteTarget target, PlanContents? old, PlanContents wanted, FindingLog log)
    {
        var size = SectorGroup.TotalOf(target.Map);
        var isWhole = IsWhole(target.Part, size, wanted, log) & (old is null || IsWhole(target.Part, size, old, log));
        return isWhole ? Plan(target, old ?? PlanContents.Blank(wanted.Bytes.Length), wanted, new SourcePlace(wanted.Name), log) : null;
    }

    private static WritePlan Plan(WriteTarget target, PlanContents old, PlanContents wanted, SourcePlace place, FindingLog log)
    {
        var plan = WritePlanner.Plan(target, old.Bytes.Span, wanted.Bytes.Span);
        if (!plan.IsPossible)
        {
            log.Add(PlanFindings.NeedsNewChip, place, $"Bits of {target.Part.Name} would have to go from 0 to 1, and it can never be erased.");
        }

        var twice = target.Part.Notes.Contains("once per erase", StringComparison.Ordinal) ? CountTwice(plan, old.Bytes.Span, wanted.Bytes.Span) : 0;
        if (twice > 0)
        {
            log.Add(PlanFindings.ProgrammedTwice, place, string.Create(CultureInfo.InvariantCulture, $"In {Sectors(twice)} of {target.Part.Name} units would be programmed that are programmed already."));
        }

        SectorAdvice.Tell(plan, old.Bytes.Span, wanted.Bytes.Span, place, log);
        return plan;
    }

    private static int CountTwice(WritePlan plan, ReadOnlySpan<byte> old, ReadOnlySpan<byte> wanted)
    {
        var count = 0;
        foreach (var step in plan.Steps)
        {
            count += step.Action == WriteAction.Program && CellCompare.IsProgrammedTwice(old[step.Start..step.End], wanted[step.Start..step.End]) ? 1 : 0;
        }

        return count;
    }

    private static string Sectors(int count) => count == 1 ? "1 sector" : string.Create(CultureInfo.InvariantCulture, $"{count} sectors");

    // A part that can be used either way is commonly written in words.
    private static int OwnWidth(Part part) =>
        part.Supports(WideWidth) || (part.DataBus == PartDataBus.Serial && part.Programming.Granularity.StartsWith("word", StringComparison.Ordinal)) ? WideWidth : NarrowWidth;

    private static WriteTarget? Unknown(Part part, BootEnd? end, SourcePlace place, FindingLog log)
    {
        if (end is null && PartVariant.HasEnds(part))
        {
            log.Add(PlanFindings.EndUnknown, place, $"{part.Name} has its small sectors at one end, and the name does not say at which: {part.Sectors.Layout}.");
        }
        else
        {
            var layout = part.Sectors.Layout.Length == 0 ? "" : $" ({part.Sectors.Layout})";
            log.Add(PlanFindings.SectorsUnknown, place, $"The catalogue does not have the sectors of this {part.Name}{layout}.");
        }

        return null;
    }

    private static WriteTarget? CheckStated(WriteTarget target, ImmutableArray<SectorGroup> map, SourcePlace place, FindingLog log)
    {
        var part = target.Part;
        var total = SectorGroup.TotalOf(map);
        if (total != part.CapacityBytes && part.Evidence.SawCapacity)
        {
            log.Add(PlanFindings.BadMap, place, $"The stated sectors make {ByteSize.Describe(total)} together, and {part.Name} holds {ByteSize.Describe(part.CapacityBytes)}.");
            return null;
        }

        if (map.Any(group => group.Bytes % target.UnitBytes != 0))
        {
            log.Add(PlanFindings.BadMap, place, $"A stated sector is no whole number of words, and {part.Name} is written in words.");
            return null;
        }

        return target;
    }

    private static WriteTarget Warned(WriteTarget target, BootEnd? end, SourcePlace place, FindingLog log)
    {
        var part = target.Part;
        if (target.Method is WriteMethod.Sectors or WriteMethod.Pages && !part.Evidence.SawSectors)
        {
            log.Add(PlanFindings.MapFromMemory, place, $"The sectors of {part.Name} in the catalogue are from memory: {part.Sectors.Layout}.");
        }

        if (end is null && PartVariant.HasOtherKinds(part))
        {
            log.Add(PlanFindings.SeveralMaps, place, $"{part.Name} stands for variants with other sectors: {part.Sectors.Layout}.");
        }

        return target;
    }

    private static bool IsWhole(Part part, long size, PlanContents contents, FindingLog log)
    {
        var isWhole = contents.Bytes.Length == size;
        if (!isWhole)
        {
            log.Add(PlanFindings.NotWhole, new SourcePlace(contents.Name), $"{contents.Name} has {ByteSize.Describe(contents.Bytes.Length)}, and {part.Name} holds {ByteSize.Describe(size)}.");
        }

        return isWhole;
    }
}
