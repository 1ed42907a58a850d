using System.Collections.Immutable;

namespace Cartwright.Chips;

/// <summary>Makes a part from a row of the parts table.</summary>
internal static class PartReader
{
    private const string NameColumn = "part";
    private const string AliasColumn = "other_names";

    /// <summary>The names of one row, its own first: cheap to read, so that finding one part does not read them all.</summary>
    /// <exception cref="InvalidDataException">The row has no name.</exception>
    public static ImmutableArray<string> Names(CsvRow row) => [row.Required(NameColumn), .. PartFigures.Names(row[AliasColumn])];

    /// <summary>The part of one row.</summary>
    /// <exception cref="InvalidDataException">A field cannot be read.</exception>
    public static Part Read(CsvRow row) => new()
    {
        Name = row.Required(NameColumn),
        Aliases = PartFigures.Names(row[AliasColumn]),
        Makers = row.Required("makers"),
        Kind = row.Read<PartKind>("kind", PartWords.Kinds.TryRead),
        CapacityBytes = row.Read<long>("capacity_bytes", PartFigures.TryBytes),
        DataBus = row.Read<PartDataBus>("data_bus", PartWords.DataBuses.TryRead),
        Packages = row.Required("package"),
        Supply = ReadSupply(row),
        Sectors = ReadSectors(row),
        Programming = ReadProgramming(row),
        Identity = new PartIdentity(row["mfr_id"], row["device_id"]),
        AccessText = row["access_ns"],
        AccessNanoseconds = row.Read<ImmutableArray<int>>("access_ns", PartFigures.TryAccess),
        Endurance = row.Read<PartEndurance>("endurance_cycles", PartFigures.TryEndurance),
        Evidence = ReadEvidence(row),
        Notes = row["notes"],
        Pinouts = PartFigures.Names(row["pinout"]),
    };

    private static PartSupply ReadSupply(CsvRow row)
    {
        var (min, max) = row.Read<(double Min, double Max)>("vcc_read_v", PartFigures.TryVolts);
        return new PartSupply
        {
            MinVolts = min,
            MaxVolts = max,
            Text = row["vcc_read_v"],
            Class = row.Read<SupplyClass>("supply_class", PartWords.SupplyClasses.TryRead),
            FiveVoltTolerantInputs = row.Read<FiveVoltTolerance>("five_volt_tolerant_inputs", PartWords.Tolerances.TryRead),
            FiveVoltSource = row.Required("five_volt_source"),
        };
    }

    private static PartSectors ReadSectors(CsvRow row) => new()
    {
        Layout = row["sector_layout"],
        Map = row.Read<ImmutableArray<SectorGroup>>("sector_map", PartFigures.TrySectorMap),
        IsPageWrite = row["typ_sector_erase_ms"] == "inside the page write",
        TypicalSectorEraseMilliseconds = row["typ_sector_erase_ms"],
        TypicalChipEraseMilliseconds = row["typ_chip_erase_ms"],
    };

    private static PartProgramming ReadProgramming(CsvRow row) => new()
    {
        Granularity = row.Required("program_granularity"),
        TypicalMicroseconds = row["typ_program_us"],
        ProgrammingVoltage = row["vpp_v"],
        CommandSet = row.Required("command_set"),
        CommonFlashInterface = row["cfi"],
    };

    private static PartEvidence ReadEvidence(CsvRow row) => new()
    {
        Status = row.Read<PartStatus>("status", PartWords.Statuses.TryRead),
        VerifiedFields = row["verified_fields"],
        Source = row.Required("source"),
        SourceAddress = row["source_address"],
    };
}
