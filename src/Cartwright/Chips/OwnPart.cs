using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Chips;

/// <summary>A part the catalogue lacks, as a manifest describes it at a site.</summary>
public static class OwnPart
{
    private const double HighestSupply = 30;

    /// <summary>Its capacity in bytes: stated, or the sum of its sectors; null when neither is said.</summary>
    /// <param name="chip">What the manifest says.</param>
    public static long? CapacityOf(ChipSettings chip) => chip.Capacity
        ?? (chip.Sectors is { } sectors && SectorMapText.TryParse(sectors.Text, out var map) ? SectorGroup.TotalOf(map) : null);

    /// <summary>Reads the description and checks it against the site.</summary>
    /// <param name="chip">What the manifest says.</param>
    /// <param name="use">What the board asks of the part.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when no more than the capacity is said, or something is wrong.</returns>
    public static Part? Read(ChipSettings chip, PartUse use, FindingLog log)
    {
        if (!IsDescribed(chip) || CapacityOf(chip) is not { } capacity)
        {
            return null;
        }

        var before = log.Count;
        var bus = use.Width == 16 ? PartDataBus.Sixteen : PartDataBus.Eight;
        if (chip.Width is { } width && !PartWords.Widths.TryRead(width.Text, out bus))
        {
            Refuse(use, width, "`8`, `16` or `8/16`", log);
        }

        var volts = chip.Supply is { } supply ? ReadVolts(supply, use, log) : null;
        var map = chip.Sectors is { } sectors ? ReadMap(sectors, capacity, use, log) : [];
        if (log.Count > before)
        {
            return null;
        }

        var part = DescribedPart.Of(chip.Part!.Text, capacity, bus, volts, map);
        if (capacity >= use.NeededBytes)
        {
            PartChecks.Check(part, use, log, chip.Part.Place);
        }

        return part;
    }

    /// <summary>Tells when a part of the catalogue is described all the same.</summary>
    /// <param name="chip">What the manifest says.</param>
    /// <param name="part">The part of the catalogue.</param>
    /// <param name="log">Receives the finding.</param>
    public static void TellNeedless(ChipSettings chip, Part part, FindingLog log)
    {
        if (IsDescribed(chip))
        {
            log.Add(OwnPartFindings.NeedlessDescription, chip.Place, $"{chip.Site}: width, supply or sectors are stated, and the catalogue has the part {part.Name}.");
        }
    }

    private static bool IsDescribed(ChipSettings chip) => chip.Width is not null || chip.Supply is not null || chip.Sectors is not null;

    private static (double Min, double Max)? ReadVolts(ManifestValue supply, PartUse use, FindingLog log)
    {
        var text = supply.Text.Replace(" ", "", StringComparison.Ordinal).TrimEnd('V', 'v');
        var range = text.Contains('-', StringComparison.Ordinal) ? text : $"{text}-{text}";
        if (PartFigures.TryVolts(range, out var volts) && volts.Min > 0 && volts.Max <= HighestSupply)
        {
            return volts;
        }

        Refuse(use, supply, "volts such as `4.5-5.5`", log);
        return null;
    }

    private static ImmutableArray<SectorGroup> ReadMap(ManifestValue sectors, long capacity, PartUse use, FindingLog log)
    {
        if (!SectorMapText.TryParse(sectors.Text, out var map))
        {
            Refuse(use, sectors, SectorMapText.Forms, log);
        }
        else if (SectorGroup.TotalOf(map) is var total && total != capacity)
        {
            log.Add(OwnPartFindings.BadDescription, sectors.Place, string.Create(CultureInfo.InvariantCulture,
                $"{use.Site}: the sectors make {ByteSize.Describe(total)} together, and the chip holds {ByteSize.Describe(capacity)}."));
        }

        return map;
    }

    private static void Refuse(PartUse use, ManifestValue value, string expected, FindingLog log) =>
        log.Add(OwnPartFindings.BadDescription, value.Place, $"{use.Site}: `{value.Text}` is no value for `{value.Place.Key}`.", expected);
}
