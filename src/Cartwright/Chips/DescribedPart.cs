using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Chips;

/// <summary>Makes a part that the catalogue lacks from what somebody says of it.</summary>
public static class DescribedPart
{
    /// <summary>The part: flash whose times, identity and package are not known.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="capacity">Its capacity in bytes.</param>
    /// <param name="bus">Its data lines.</param>
    /// <param name="volts">Lowest and highest supply in volts; null when not said.</param>
    /// <param name="map">Its sectors from address 0 upward; empty when not said.</param>
    public static Part Of(string name, long capacity, PartDataBus bus, (double Min, double Max)? volts, ImmutableArray<SectorGroup> map) => new()
    {
        Name = name,
        Aliases = [],
        Makers = "",
        Kind = PartKind.NorFlash,
        CapacityBytes = capacity,
        DataBus = bus,
        Packages = "",
        Supply = SupplyOf(volts),
        Sectors = new PartSectors
        {
            Layout = map.IsEmpty ? "" : SectorMapText.Format(map),
            Map = map,
            IsPageWrite = false,
            TypicalSectorEraseMilliseconds = "",
            TypicalChipEraseMilliseconds = "",
        },
        Programming = new PartProgramming { Granularity = "", TypicalMicroseconds = "", ProgrammingVoltage = "", CommandSet = "", CommonFlashInterface = "" },
        Identity = new PartIdentity("", ""),
        AccessNanoseconds = [],
        AccessText = "",
        Endurance = new PartEndurance("", FewestCycles: null, IsUnlimited: false),
        Evidence = new PartEvidence { Status = PartStatus.Described, VerifiedFields = "capacity; data lines; sector map", Source = "the description", SourceAddress = "" },
        Notes = "",
        Pinouts = [],
    };

    private static PartSupply SupplyOf((double Min, double Max)? volts) => new()
    {
        MinVolts = volts?.Min ?? 0,
        MaxVolts = volts?.Max ?? double.PositiveInfinity,
        Text = volts is { } said ? string.Create(CultureInfo.InvariantCulture, $"{said.Min:0.0#}-{said.Max:0.0#}") : "",
        Class = SupplyClassOf(volts),
        FiveVoltTolerantInputs = volts is { Min: >= 4.5 } ? FiveVoltTolerance.Yes : FiveVoltTolerance.Unknown,
        FiveVoltSource = volts is { Min: >= 4.5 } ? "supply range: a 5 V part" : "unknown",
    };

    private static SupplyClass SupplyClassOf((double Min, double Max)? volts) => volts switch
    {
        { Min: >= 4.5 } => SupplyClass.FiveVolt,
        { Max: <= 2.0 } => SupplyClass.OnePointEightVolt,
        { Max: <= 3.6 } => SupplyClass.ThreeVolt,
        _ => SupplyClass.Mixed,
    };
}
