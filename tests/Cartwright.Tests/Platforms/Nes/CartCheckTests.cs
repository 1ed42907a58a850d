using Cartwright.Findings;
using Cartwright.Platforms.Nes;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

public sealed class CartCheckTests
{
    [Theory]
    [InlineData("nes2")]
    [InlineData("ines")]
    public void Nothing_is_said_of_a_clean_cart(string container) =>
        Assert.Empty(Said(Clean().Header("container", container)));

    [Fact]
    public void Codes_are_in_range_and_in_order()
    {
        var codes = NesFindings.All.Select(rule => rule.Code).ToList();
        Assert.Equal(codes.Order(StringComparer.Ordinal).Distinct(), codes);
        Assert.All(codes, code => Assert.InRange(int.Parse(code[2..]), 4110, 4149));
    }

    [Fact]
    public void A_container_left_in_front_is_an_error_that_says_how_to_take_it_apart()
    {
        byte[] file = [.. Exchange(Clean().Assemble())];
        var bench = new RomBench(new NesPlatform()).Header("mapper", "nrom").Program("prg", 0, file);
        var finding = Assert.Single(bench.Of(NesFindings.ContainerInside));
        Assert.Contains("for `prg` with `\"skip\": 16` and `\"length\": 32768`, for `chr` with `\"skip\": 32784` and `\"length\": 8192`", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_container_without_chr_is_skipped()
    {
        byte[] file = [.. "NES\x1A"u8, .. TestBytes.L(1000)];
        Assert.Contains("\"skip\": 16", Assert.Single(Clean().Program("chr", 0, file).Of(NesFindings.ContainerInside)).Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("uxrom", 8 * K, true)]
    [InlineData("uxrom", 0, false)]
    [InlineData("mmc1", 8 * K, false)]
    [InlineData("218", 8 * K, true)]
    public void Chr_rom_on_a_board_with_chr_ram(string mapper, int chr, bool told) =>
        Assert.Equal(told, Bench(mapper, 32 * K, chr).Of(NesFindings.ChrUnexpected).Any());

    [Theory]
    [InlineData("cnrom", null, true)]
    [InlineData("cnrom", "8KiB", true)]
    [InlineData("nrom", null, false)]
    [InlineData("nrom", "none", true)]
    [InlineData("218", null, false)]
    [InlineData("uxrom", "0", true)]
    public void No_chr_where_there_must_be_some(string mapper, string? ram, bool told)
    {
        var bench = Bench(mapper, 32 * K, 0);
        if (ram is not null)
            bench.Header("chrRam", ram);

        Assert.Equal(told, bench.Of(NesFindings.ChrMissing).Any());
    }

    [Theory]
    [InlineData("uxrom", "0", "false", "has bus conflicts")]
    [InlineData("uxrom", "1", "false", null)]
    [InlineData("uxrom", "2", "false", "has bus conflicts")]
    [InlineData("axrom", "0", "false", "has on some boards bus conflicts")]
    [InlineData("axrom", "2", "false", "has bus conflicts")]
    [InlineData("unrom-512", "0", "false", "has bus conflicts")]
    [InlineData("unrom-512", "0", "true", null)]
    [InlineData("mmc1", "0", "false", null)]
    [InlineData("gtrom", "0", "false", null)]
    public void Bus_conflicts_are_noted(string mapper, string submapper, string battery, string? words)
    {
        var told = Bench(mapper, 32 * K, 0).Header("submapper", submapper).Header("battery", battery).Of(NesFindings.Conflicts).ToList();
        Assert.Equal(words is null ? 0 : 1, told.Count);
        Assert.All(told, finding => Assert.Contains(words!, finding.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("uxrom", 256 * K, false)]
    [InlineData("uxrom", 512 * K, true)]
    [InlineData("axrom", 512 * K, true)]
    public void Oversize_prg(string mapper, int size, bool told) =>
        Assert.Equal(told, Bench(mapper, size, 0).Of(NesFindings.Oversize).Any());

    [Fact]
    public void A_trainer_is_an_error() =>
        Assert.Equal(FindingSeverity.Error, Assert.Single(Clean().Header("trainer", "true").Of(NesFindings.Trainer)).Severity);

    [Theory]
    [InlineData("nrom", 0, true)]
    [InlineData("mmc3", 0, true)]
    [InlineData("mmc3", 1, false)]
    [InlineData("unrom-512", 0, false)]
    [InlineData("2000", 0, false)]
    public void A_battery_with_nothing_to_keep(string mapper, int submapper, bool told) =>
        Assert.Equal(told, Bench(mapper, 32 * K, 0).Header("battery", "true").Header("submapper", submapper.ToString()).Of(NesFindings.NothingKept).Any());

    [Theory]
    [InlineData("mmc1", "2", true)]
    [InlineData("mmc1", "5", false)]
    [InlineData("unrom-512", "1", true)]
    [InlineData("nrom", "3", false)]
    public void Submappers_out_of_the_list(string mapper, string submapper, bool told) =>
        Assert.Equal(told, Bench(mapper, 32 * K, 0).Header("submapper", submapper).Of(NesFindings.Submapper).Any());

    [Fact]
    public void A_needless_exponent()
    {
        // 32 KiB is 2^15 x 1, and two units as well.
        var bench = Clean().Header("prgSize", "raw 0xF3C");
        Assert.Single(bench.Of(NesFindings.NeedlessExponent));
        Assert.False(bench.Log.HasErrors);
    }

    [Theory]
    [InlineData("nes2", "reserved12", "0x3F")]
    [InlineData("nes2", "reserved13", "0x01")]
    [InlineData("nes2", "reserved14", "1")]
    [InlineData("nes2", "reserved15", "1")]
    [InlineData("ines", "reserved9", "0x40")]
    [InlineData("ines", "reserved10", "2")]
    [InlineData("ines", "reserved11", "00 00 41 42 43")]
    public void Reserved_bits_that_are_not_zero(string container, string field, string value) =>
        Assert.Equal("header:" + field, Assert.Single(Clean().Header("container", container).Header(field, value).Of(NesFindings.NotZero)).Place.Key);

    [Theory]
    [InlineData("miscellaneousRoms", "1")]
    [InlineData("consoleType", "playchoice-10")]
    public void Further_roms_that_are_not_there(string field, string value) =>
        Assert.Single(Clean().Header(field, value).Of(NesFindings.FurtherRoms));

    [Fact]
    public void Mirroring_nobody_stated() =>
        Assert.Single(new RomBench(new NesPlatform()).Header("mapper", "nrom").Program("prg", 0, Prg(32 * K)).Of(NesFindings.MirroringUnsaid));

    [Fact]
    public void A_mapper_without_a_row() => Assert.Equal(["CW4128"], Said(Bench("1000")));

    [Theory]
    [InlineData("uxrom", 80 * K, 0)]
    [InlineData("mmc3", 128 * K, 96 * K)]
    public void A_size_that_is_no_power_of_two(string mapper, int prg, int chr) =>
        Assert.Single(Bench(mapper, prg, chr).Size("prg", prg).Size("chr", chr == 0 ? null : chr).Of(NesFindings.OddSize));

    [Fact]
    public void Prg_that_the_console_rewrites() => Assert.Single(Bench("gtrom", 512 * K, 0).Header("battery", "true").Of(NesFindings.SelfFlash));

    private static IEnumerable<string> Said(RomBench bench)
    {
        bench.Assemble();
        return bench.Codes();
    }
}
