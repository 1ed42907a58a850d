using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms.Nes;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

public sealed class MapperTableTests
{
    public static TheoryData<int> Rows() => [.. Enumerable.Range(0, NesMappers.All.Length)];

    [Fact]
    public void Rows_are_in_order_and_none_is_twice()
    {
        var keys = NesMappers.All.Select(row => (row.Number, row.Submapper ?? -1)).ToList();
        Assert.Equal(keys.Order(), keys);
        Assert.Equal(keys.Distinct(), keys);
        var rows = NesSubmappers.All.Select(row => (row.Mapper, row.Number)).ToList();
        Assert.Equal(rows.Order(), rows);
        Assert.Equal(rows.Distinct(), rows);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_is_consistent_in_itself(int index)
    {
        var row = NesMappers.All[index];
        Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", row.Name);
        Assert.Equal(0, row.PrgMax % Math.Max(row.PrgBank, 16 * K));
        Assert.True(row.PrgBank == 0 || (row.PrgBank & (row.PrgBank - 1)) == 0);
        Assert.True(row.PrgBank == 0 || (row.Reset.Span % row.PrgBank == 0 && row.FixedTop % row.PrgBank == 0));
        Assert.Equal(row.PrgBank == 0, row.PrgMax == 32 * K && row.Reset == NesReset.End);
        Assert.True(row.FixedTop <= row.SureTop);
        Assert.Equal(row.Chr == ChrKind.None, row.ChrMax == 0);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_builds_its_largest_customary_cart_without_a_warning(int index)
    {
        var row = NesMappers.All[index];
        // The general row of mapper 34 becomes one of the two boards by its CHR, and this is the larger one.
        var bench = Bench(row.Name, (int)row.PrgMax, row.TakesChrRom && row.Name != "bnrom-nina-001" ? (int)row.ChrMax : 0);
        if (row.Submapper is { } number)
            bench.Header("submapper", number.ToString());

        var cart = bench.Assemble();
        Assert.Equal(row.PrgMax, cart.Rom.LengthOf("prg"));
        Assert.DoesNotContain(bench.Log.ToSorted(), finding => finding.Severity > Cartwright.Findings.FindingSeverity.Note);
        Assert.Equal(row, NesMappers.Find(row.Number, row.Submapper ?? 0, row.Number == 34 && row.Submapper is null ? 8 * K : null));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_refuses_more_than_its_largest_cart(int index)
    {
        var row = NesMappers.All[index];
        var bench = Bench(row.Name, (int)row.PrgLargest + (16 * K), 0);
        if (row.Submapper is { } number)
            bench.Header("submapper", number.ToString());

        Assert.Single(bench.Of(Cartwright.Roms.RomFindings.TooLarge));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_name_and_number_finds_its_row(int index)
    {
        var row = NesMappers.All[index];
        Assert.Equal(row.Number, NesMappers.Named(row.Name.ToUpperInvariant())!.Number);
        Assert.True(MapperText.Instance.TryParse(row.Name, out var number));
        Assert.Equal(row.Number, (int)number);
        Assert.True(MapperText.Instance.TryParse(MapperText.Instance.Format(number), out var again));
        Assert.Equal(number, again);
        Assert.True(MapperText.Instance.TryParse(row.Number.ToString(), out var plain));
        Assert.Equal(number, plain);
    }

    [Theory]
    [InlineData("axrom", 512 * K, 32 * K)]
    [InlineData("uxrom", 80 * K, 16 * K)]
    public void Sizes_between_powers_of_two_are_legal_when_stated(string mapper, int size, int bank) =>
        Assert.Equal(size, Bench(mapper, size, 0, bank).Size("prg", size).Assemble().Rom.LengthOf("prg"));

    [Theory]
    [InlineData("uxrom", 72 * K)]
    [InlineData("axrom", 48 * K)]
    [InlineData("nrom", 24 * K)]
    public void Sizes_between_banks_are_not(string mapper, int size) =>
        Assert.Single(Bench(mapper, 16 * K, 0).Size("prg", size).Of(Cartwright.Roms.RomFindings.IllegalSize));

    [Theory]
    [InlineData("uxrom", 70 * K, 128 * K)]
    [InlineData("nrom", 10 * K, 16 * K)]
    [InlineData("axrom", 10 * K, 32 * K)]
    [InlineData("nsf-style", 33 * K, 64 * K)]
    public void A_fitting_size_is_a_power_of_two(string mapper, int needed, int size) =>
        Assert.Equal(size, Bench(mapper, needed, 0).TryAssemble()!.Rom.LengthOf("prg"));

    [Theory]
    [InlineData(0, null, "bnrom-nina-001")]
    [InlineData(0, 0, "bnrom")]
    [InlineData(0, 16 * K, "nina-001")]
    [InlineData(1, 0, "nina-001")]
    [InlineData(2, 16 * K, "bnrom")]
    public void Mapper_34_is_told_by_submapper_or_chr(int submapper, int? chr, string name) =>
        Assert.Equal(name, NesMappers.Find(34, submapper, chr)!.Name);

    [Fact]
    public void Every_mapper_says_what_it_is_for_documents() =>
        Assert.All(MapperText.Instance.Names, row => Assert.Contains("RESET vector", row.Meaning, StringComparison.Ordinal));

    [Theory]
    [InlineData("unrom")]
    [InlineData("-1")]
    [InlineData("4096")]
    [InlineData("99999999999")]
    public void What_is_no_mapper_is_an_error(string text)
    {
        var bench = Clean().Header("mapper", text);
        Assert.Equal("mapper", Assert.Single(bench.Of(HeaderFindings.BadValue)).Message.Split('`')[3]);
        Assert.NotNull(new NesPlatform().Layout(HeaderSettings.None));
    }
}
