namespace Cartwright.Chips;

/// <summary>What a catalogue entry rests on.</summary>
public sealed record PartEvidence
{
    /// <summary>How much of it was seen in a source.</summary>
    public required PartStatus Status { get; init; }

    /// <summary>Exactly what was seen; blank when everything is from memory.</summary>
    public required string VerifiedFields { get; init; }

    /// <summary>Titles of the sources, or <c>from memory</c>.</summary>
    public required string Source { get; init; }

    /// <summary>Where they were found; blank when everything is from memory.</summary>
    public required string SourceAddress { get; init; }

    /// <summary>True when the capacity was seen, by itself or as the sum of a sector map.</summary>
    public bool SawCapacity => Status == PartStatus.Verified || Lists("capacity") || Lists("sector map");

    /// <summary>True when the sector map, or the size of the pages, was seen.</summary>
    public bool SawSectors => Status == PartStatus.Verified || Lists("sector") || Lists("page size") || Lists("page write") || Lists("all filled columns");

    /// <summary>True when the width of the data bus was seen: the capacity line of a data sheet names it, as do pin-outs and packages.</summary>
    public bool SawDataBus => SawCapacity || Lists("package") || Lists("pin-out");

    /// <summary>True when the number of cycles was seen.</summary>
    public bool SawEndurance => Lists("endurance") || Lists("cycles") || Lists("all filled columns");

    /// <summary>True when the programming voltage was seen.</summary>
    public bool SawProgrammingVoltage => Status == PartStatus.Verified || Lists("VPP");

    private bool Lists(string field) =>
        Status != PartStatus.FromMemory && VerifiedFields.Contains(field, StringComparison.OrdinalIgnoreCase);
}
