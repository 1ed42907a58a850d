using System.Numerics;
using System.Text.RegularExpressions;
using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Chips;

/// <summary>The rules the parts table must hold, whatever is added to it later.</summary>
public sealed partial class PartRulesTests
{
    private static readonly byte[] Text = PartCatalog.ReadResource("chips/parts.csv");
    private static readonly CsvTable Table = CsvTable.Parse("parts.csv", Text);

    [Fact]
    public void The_table_is_plain_ascii_with_line_feeds()
    {
        Assert.DoesNotContain(Text, static letter => letter > 0x7E || (letter < 0x20 && letter != '\n'));
        Assert.Equal((byte)'\n', Text[^1]);
    }

    [Fact]
    public void No_field_begins_or_ends_with_a_blank() =>
        All(row => Table.Header.All(column => row[column] == row[column].Trim()));

    [Fact]
    public void Counts_by_status_are_as_published()
    {
        int Count(PartStatus status) => PartCatalog.BuiltIn.All.Count(part => part.Evidence.Status == status);
        Assert.Equal(210, PartCatalog.BuiltIn.All.Length);
        Assert.Equal((47, 128, 35), (Count(PartStatus.Verified), Count(PartStatus.PartlyVerified), Count(PartStatus.FromMemory)));
    }

    [Fact]
    public void Names_are_unique() =>
        Assert.Equal(Table.Rows.Length, Table.Rows.Select(row => PartName.Plain(row["part"])).Distinct().Count());

    [Fact]
    public void Capacities_are_powers_of_two() => All(part => BitOperations.IsPow2(part.CapacityBytes));

    [Fact]
    public void Sector_maps_add_up_to_the_capacity() =>
        All(part => part.Sectors.Map.IsEmpty || part.Sectors.Map.Sum(group => (long)group.Count * group.Bytes) == part.CapacityBytes);

    [Fact]
    public void The_supply_class_follows_from_the_volts() => All(part => part.Supply.Class == ClassOf(part.Supply));

    [Fact]
    public void Five_volt_parts_are_tolerant() =>
        All(part => part.Supply.Class != SupplyClass.FiveVolt || part.ToleratesFiveVolts);

    [Fact]
    public void The_source_of_tolerance_is_unknown_exactly_when_the_answer_is() =>
        All(part => part.Supply.FiveVoltSource == "unknown" == (part.Supply.FiveVoltTolerantInputs == FiveVoltTolerance.Unknown));

    [Fact]
    public void Ids_are_hexadecimal() => All(row => ManufacturerId().IsMatch(row["mfr_id"]) && DeviceId().IsMatch(row["device_id"]));

    [Theory]
    [InlineData("typ_program_us")]
    [InlineData("typ_sector_erase_ms")]
    [InlineData("typ_chip_erase_ms")]
    [InlineData("access_ns")]
    [InlineData("endurance_cycles")]
    public void Figures_begin_with_a_digit_or_say_why_not(string column) =>
        All(row => row[column] is "" or "inside the page write" or "unlimited" or "n/a" || char.IsAsciiDigit(row[column][0]));

    [Fact]
    public void Page_write_parts_say_so_in_both_columns() =>
        All(part => part.Sectors.IsPageWrite == part.Sectors.Layout.Contains("each page write", StringComparison.Ordinal));

    [Fact]
    public void Rows_from_memory_name_no_field_and_no_source() =>
        All(row => row["status"] != "from memory" || (row["verified_fields"], row["source"], row["source_address"]) == ("", "from memory", ""));

    [Fact]
    public void Other_rows_name_fields_source_and_address() =>
        All(row => row["status"] == "from memory"
            || (row["verified_fields"].Length > 0 && row["source_address"].Length > 0 && row["source"] is not ("" or "from memory")));

    [Fact]
    public void Partly_verified_rows_alone_speak_of_the_other_columns() =>
        All(row => (row["status"] == "partly verified")
            == row["verified_fields"].EndsWith(" -- every other column from memory", StringComparison.Ordinal));

    [Fact]
    public void Pinouts_match_a_package_of_the_part() =>
        All(part => part.Pinouts.All(pinout => ComesIn(part.Packages, PinoutName().Match(pinout))));

    private static void All(Predicate<CsvRow> rule) =>
        Assert.Empty(Table.Rows.Where(row => !rule(row)).Select(row => row["part"]));

    private static void All(Predicate<Part> rule) =>
        Assert.Empty(PartCatalog.BuiltIn.All.Where(part => !rule(part)).Select(part => part.Name));

    private static SupplyClass ClassOf(PartSupply supply) => supply switch
    {
        { MinVolts: >= 4.5 } => SupplyClass.FiveVolt,
        { MaxVolts: <= 2.0 } => SupplyClass.OnePointEightVolt,
        { MaxVolts: <= 3.6 } => SupplyClass.ThreeVolt,
        _ => SupplyClass.Mixed,
    };

    // A dual-in-line pin-out of 8 or 28 pins also stands for the small-outline package.
    private static bool ComesIn(string packages, Match pinout)
    {
        var (letters, pins) = (pinout.Groups["letters"].Value, pinout.Groups["pins"].Value);
        var alsoSmallOutline = letters == "DIP" && pins is "8" or "28" && packages.Contains("SO", StringComparison.Ordinal);
        return pinout.Success
            && Regex.IsMatch(packages, $@"\b{pins}\b")
            && (packages.Contains(letters, StringComparison.Ordinal) || alsoSmallOutline);
    }

    [GeneratedRegex(@"^([0-9A-F]{2}|[0-9A-F]{4})?( \(after 7F\))?$")]
    private static partial Regex ManufacturerId();

    [GeneratedRegex(@"^(([0-9A-F]{4}|[0-9A-F]{2})\b|top|bottom|uniform|or|\(?[TBHLA]\)?|\([AB]\)|[ /+;,])*$")]
    private static partial Regex DeviceId();

    [GeneratedRegex(@"^(?<letters>[A-Z]+)(?<pins>\d+)-[0-9A-Za-z-]+$")]
    private static partial Regex PinoutName();
}
