using System.Text;
using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class PartCatalogTests
{
    private static readonly PartCatalog Catalog = PartCatalog.BuiltIn;

    [Fact]
    public void Every_part_is_found_by_its_own_name() =>
        Assert.All(Catalog.All, static part => Assert.Same(part, Catalog.Find(part.Name)));

    [Fact]
    public void Every_orderable_name_finds_its_own_row_so_none_is_ambiguous() =>
        Assert.All(Catalog.All, static part => Assert.All(part.Aliases, alias => Assert.Same(part, Catalog.Find(alias))));

    [Fact]
    public void Every_row_that_stands_for_several_names_lists_them() =>
        Assert.All(
            Catalog.All.Where(static part => part.Name.AsSpan().ContainsAny(" /(")),
            static part => Assert.NotEmpty(part.Aliases));

    [Theory]
    [InlineData("MX29F400B", "MX29F400T/B")]
    [InlineData("mx29f400t", "MX29F400T/B")]
    [InlineData("MX-29F400", "MX29F400T/B")]
    [InlineData("HM628128", "628128 (HM628128, AS6C1008)")]
    [InlineData("AS6C1008", "628128 (HM628128, AS6C1008)")]
    [InlineData("AS6C1008-55PCN", "628128 (HM628128, AS6C1008)")]
    [InlineData("628128", "628128 (HM628128, AS6C1008)")]
    [InlineData("SST39VF1602C", "SST39VF1601C / 1602C")]
    [InlineData("SST39VF1601", "SST39VF1601")]
    [InlineData("SST39SF040-70-4C-PHE", "SST39SF040")]
    [InlineData("27C080", "M27C801 (27C080)")]
    [InlineData("Am29F400BT", "Am29F400B T/B")]
    [InlineData("28F400BX-T", "28F400B5 / BX T/B")]
    [InlineData("MX29F040C", "MX29F040(C)")]
    [InlineData("am29f002b t/b", "Am29F002B T/B")]
    public void Names_find_their_row(string name, string row) => Assert.Equal(row, Catalog.Find(name)?.Name);

    // The row's capacity is that of one of its members; the others must not be taken for it.
    [Theory]
    [InlineData("Pm39F010")]
    [InlineData("28F008S5")]
    [InlineData("28F320S3")]
    [InlineData("28F320J5")]
    [InlineData("512M29EW")]
    [InlineData("28F800B3")]
    [InlineData("")]
    [InlineData("-")]
    [InlineData("SST39SF04")]
    [InlineData("27C801")]
    public void Sisters_of_another_capacity_and_pieces_of_names_find_nothing(string name) => Assert.Null(Catalog.Find(name));

    [Fact]
    public void A_name_that_two_rows_claim_finds_neither()
    {
        var (first, second, third) = (Catalog.All[0], Catalog.All[1], Catalog.All[2]);
        var catalog = new PartCatalog([first with { Aliases = ["Shared", "One"] }, second with { Aliases = ["sha-red"] }, third with { Aliases = ["Shared"] }]);
        Assert.Null(catalog.Find("Shared"));
        Assert.Equal(first.Name, catalog.Find("One")?.Name);
    }

    [Fact]
    public void A_rows_own_name_stands_against_a_claim()
    {
        var catalog = new PartCatalog([Catalog.All[0], Catalog.All[1] with { Aliases = [Catalog.All[0].Name] }]);
        Assert.Same(Catalog.All[0], catalog.Find(Catalog.All[0].Name));
    }

    [Fact]
    public void Two_rows_of_one_name_are_refused() =>
        Assert.Throws<InvalidDataException>(() => new PartCatalog([Catalog.All[0], Catalog.All[0]]));

    [Theory]
    [InlineData("kind", "nor-flash", "core-memory")]
    [InlineData("capacity_bytes", ",524288,", ",half a megabyte,")]
    [InlineData("status", ",verified,", ",sworn,")]
    [InlineData("vcc_read_v", ",4.5-5.5,", ",5,")]
    public void A_field_that_cannot_be_read_is_refused_by_name(string column, string good, string bad)
    {
        var text = Encoding.UTF8.GetString(PartCatalog.ReadResource("chips/parts.csv"));
        var spoilt = Encoding.UTF8.GetBytes(text.Replace(good, bad, StringComparison.Ordinal));
        Assert.Contains($"'{column}' cannot be", Assert.Throws<InvalidDataException>(() => PartCatalog.Load(spoilt).All).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SST39SF04", "SST39SF040")]
    [InlineData("SST39SF004-70-4C-PHE", "SST39SF040")]
    [InlineData("HM628182", "HM628128")]
    [InlineData("Pm39F010", "Pm39F040")]
    public void The_nearest_names_are_proposed(string name, string near) => Assert.Contains(near, Catalog.Nearest(name));

    [Fact]
    public void Nothing_is_near_to_nonsense() => Assert.Empty(Catalog.Nearest("xyzzyxyzzyxyzzyxyzzy"));

    [Theory]
    [InlineData("SST 512KiB", new[] { "SST39SF040", "SST39VF040", "SST39VF400A" })]
    [InlineData("sst39 4mbit 5v", new[] { "SST39SF040" })]
    [InlineData("sst39 8-bit dip 5V 128KiB", new[] { "SST39SF010A" })]
    [InlineData("as6c4008", new[] { "628512 (HM628512, AS6C4008)" })]
    [InlineData("fram 3V", new[] { "FM28V020", "MB85R256F", "MB85R1001A" })]
    [InlineData("uv eprom 32Mbit 16-bit", new[] { "M27C322" })]
    [InlineData("serial 64B", new string[0])]
    [InlineData("sst39sf DIP32 256KiB+", new[] { "SST39SF020A", "SST39SF040" })]
    [InlineData("uv 2MiB+ 3.3V", new string[0])]
    [InlineData("uv 2MiB+ 5.0V 60ns", new[] { "M27C160" })]
    [InlineData("mx29lv160c 3.3V TSOP48", new[] { "MX29LV160C T/B" })]
    [InlineData("m27c64a DIP32", new string[0])]
    [InlineData("m27c64a PLCC-32", new[] { "M27C64A" })]
    public void Every_word_of_a_search_must_match(string words, string[] names) =>
        Assert.Equal(names, Catalog.Search(words).Select(static part => part.Name));

    [Fact]
    public void A_search_without_words_finds_everything() => Assert.Equal(Catalog.All, Catalog.Search(" "));

    [Theory]
    [InlineData(524288, 8, 5.0)]
    [InlineData(524289, 8, 5.0)]
    [InlineData(2097152, 16, 3.3)]
    [InlineData(0, 16, 5.0)]
    public void Parts_that_could_hold_a_program_are_large_and_wide_enough_and_in_order(long bytes, int width, double volts)
    {
        var parts = Catalog.CouldHold(bytes, width, volts);
        Assert.NotEmpty(parts);
        Assert.All(parts, part => Assert.True(part.IsRom && part.Supports(width) && part.CapacityBytes >= bytes));
        Assert.Equal(Catalog.All.Count(part => part.IsRom && part.Supports(width) && part.CapacityBytes >= bytes), parts.Length);
        Assert.All(parts.Zip(parts.Skip(1)), pair => Assert.True(Precedes(pair.First, pair.Second, volts)));
    }

    [Fact]
    public void Five_volt_parts_are_proposed_first_on_a_five_volt_bus()
    {
        var parts = Catalog.CouldHold(8 * 1024 * 1024, 16).Select(static part => part.Name).ToArray();
        Assert.Equal("28F320J5 / 28F640J5", parts[0]);
        Assert.Contains("SST39VF6401", parts);
    }

    [Fact]
    public void Nothing_holds_more_than_the_largest_part() => Assert.Empty(Catalog.CouldHold(1L << 40, 8));

    [Fact]
    public void Nothing_has_another_width_than_8_or_16() => Assert.Empty(Catalog.CouldHold(1, 32));

    // SST39SF010A/020A/040 data sheet S71147 / DS20005022C.
    [Fact]
    public void A_row_reads_back_as_its_data_sheet_says()
    {
        var part = Catalog.Find("SST39SF040")!;
        Assert.Equal((524288L, PartKind.NorFlash, PartDataBus.Eight), (part.CapacityBytes, part.Kind, part.DataBus));
        Assert.Equal((4.5, 5.5, SupplyClass.FiveVolt), (part.Supply.MinVolts, part.Supply.MaxVolts, part.Supply.Class));
        Assert.Equal([new SectorGroup(128, 4096)], part.Sectors.Map);
        Assert.Equal(new PartIdentity("BF", "B7"), part.Identity);
        Assert.Equal(100_000, part.Endurance.FewestCycles);
        Assert.True(part.IsRom && part.ToleratesFiveVolts && part.Supports(8) && !part.Supports(16));
        Assert.Equal(PartStatus.Verified, part.Evidence.Status);
    }

    [Theory]
    [InlineData("FM1808", false)]
    [InlineData("HM62256A", false)]
    [InlineData("24C02", false)]
    [InlineData("AT28C256", true)]
    [InlineData("M27C512", true)]
    [InlineData("AT27C512R", true)]
    public void Only_parallel_memories_that_keep_their_contents_carry_programs(string name, bool isRom) =>
        Assert.Equal(isRom, Catalog.Find(name)!.IsRom);

    [Theory]
    [InlineData("M27C512", true)]
    [InlineData("W27C512", true)]
    [InlineData("MX29F1615", true)]
    [InlineData("28F008SA", true)]
    [InlineData("SST39SF040", false)]
    [InlineData("M29W320D", false)] // 12 V only speeds it up
    [InlineData("AT28C256", false)]
    public void A_high_programming_voltage_is_known(string name, bool needed) =>
        Assert.Equal(needed, Catalog.Find(name)!.Programming.NeedsHighVoltage);

    private static bool Precedes(Part first, Part second, double volts)
    {
        var order = second.Supply.Covers(volts).CompareTo(first.Supply.Covers(volts));
        order = order != 0 ? order : first.CapacityBytes.CompareTo(second.CapacityBytes);
        return (order != 0 ? order : string.CompareOrdinal(first.Name, second.Name)) < 0;
    }
}
