using Cartwright.Headers;
using Cartwright.Platforms.Nes;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>Header bytes worked out by hand from NESdev Wiki, NES 2.0 and INES.</summary>
public sealed class ContainerTests
{
    [Fact]
    public void Nrom_in_ines_with_vertical_mirroring()
    {
        var cart = Bench("nrom").Header("container", "ines").Header("mirroring", "vertical-mirroring").Assemble();
        Assert.Equal("4E 45 53 1A 02 01 01 00 00 00 00 00 00 00 00 00", Header(cart));
    }

    [Fact]
    public void Unrom_512_that_rewrites_itself()
    {
        // Bit 0 is set in this example: vertical mirroring.
        var cart = Bench("30", 512 * K, 0).Header("chrRam", "32KiB").Header("battery", "true").Header("mirroring", "vertical-mirroring")
            .Header("timing", "ntsc").Header("defaultExpansionDevice", "standard-controllers").Assemble();
        Assert.Equal("4E 45 53 1A 20 00 E3 18 00 00 00 09 00 00 00 01", Header(cart));
    }

    [Fact]
    public void Mmc1_with_save_ram()
    {
        var cart = Bench("mmc1", 256 * K, 128 * K).Header("prgSaveRam", "8KiB").Header("defaultExpansionDevice", "standard-controllers").Assemble();
        Assert.Equal("4E 45 53 1A 10 10 12 08 00 00 70 00 00 00 00 01", Header(cart));
    }

    [Fact]
    public void Gtrom_with_four_screens_and_its_16_KiB_of_chr_ram_worked_out()
    {
        var cart = Bench("gtrom", 512 * K, 0).Header("battery", "true").Header("mirroring", "four-screen").Header("defaultExpansionDevice", "0x01").Assemble();
        Assert.Equal("4E 45 53 1A 20 00 FA 68 00 00 00 08 00 00 00 01", Header(cart));
    }

    [Fact]
    public void One_chip_board_without_any_chr()
    {
        var cart = Bench("218", 32 * K, 0).Header("defaultExpansionDevice", "standard-controllers").Assemble();
        Assert.Equal("4E 45 53 1A 02 00 A0 D8 00 00 00 00 00 00 00 01", Header(cart));
    }

    [Theory]
    [InlineData("30", "one-screen", 0x08)]
    [InlineData("30", "four-screen", 0x09)]
    [InlineData("218", "one-screen-a12", 0x08)]
    [InlineData("218", "one-screen-a13", 0x09)]
    [InlineData("mmc3", "four-screen", 0x08)]
    [InlineData("mmc3", "mapper-controlled", 0x00)]
    [InlineData("nrom", "vertical-mirroring", 0x01)]
    public void Mirroring_bits_mean_what_the_mapper_makes_of_them(string mapper, string word, int bits)
    {
        var cart = Bench(mapper, 32 * K, mapper is "30" or "218" ? 0 : 8 * K).Header("mirroring", word).Assemble();
        Assert.Equal(bits, Assert.Single(cart.Headers).Container[6] & 0x09);
    }

    [Fact]
    public void Vs_and_extended_consoles_have_byte_13()
    {
        var vs = Clean().Header("consoleType", "vs-system").Header("vsPpu", "rc2c05-03").Header("vsHardware", "dual-system").Assemble();
        Assert.Equal("4E 45 53 1A 02 01 00 09 00 00 00 00 00 5A 00 00", Header(vs));
        var extended = Clean().Header("consoleType", "extended").Header("extendedConsole", "vt369").Assemble();
        Assert.Equal("4E 45 53 1A 02 01 00 0B 00 00 00 00 00 0A 00 00", Header(extended));
    }

    [Fact]
    public void A_field_the_console_type_does_not_have_is_told_and_not_ignored() =>
        Assert.Single(Clean().Header("vsPpu", "rc2c05-03").Of(HeaderFindings.NotHere));

    [Fact]
    public void A_mapper_above_255_and_a_submapper()
    {
        var cart = Bench("2560", 32 * K, 8 * K).Header("submapper", "3").Assemble();
        Assert.Equal("4E 45 53 1A 02 01 00 08 3A 00 00 00 00 00 00 00", Header(cart));
    }

    [Theory]
    [InlineData("bnrom", 0, 0x20)]
    [InlineData("nina-001", 64 * K, 0x10)]
    [InlineData("34", 0, 0x00)]
    public void The_two_boards_of_mapper_34_name_their_submapper(string mapper, int chr, int byte8)
    {
        var header = Assert.Single(Bench(mapper, 64 * K, chr).Assemble().Headers).Container;
        Assert.Equal((byte)byte8, header[8]);
        Assert.Equal(0x20, header[6] & 0xF0);
        Assert.Equal(0x20, header[7] & 0xF0);
    }

    [Theory]
    [InlineData("nrom", 0, "8KiB")]
    [InlineData("uxrom", 0, "8KiB")]
    [InlineData("cprom", 0, "16KiB")]
    [InlineData("tqrom", 64 * K, "8KiB")]
    [InlineData("nrom", 8 * K, "0")]
    [InlineData("218", 0, "0")]
    [InlineData("cnrom", 0, "0")]
    [InlineData("1000", 0, "0")]
    public void Chr_ram_is_declared_where_the_board_has_it(string mapper, int chr, string expected) =>
        Assert.Equal(expected, Bench(mapper, 32 * K, chr).Assemble()["chrRam"]);

    [Fact]
    public void Save_ram_sets_the_battery_flag_and_a_false_one_is_an_error()
    {
        Assert.Equal("true", Bench("uxrom", 32 * K, 0).Header("chrSaveRam", "8KiB").Assemble()["battery"]);
        Assert.Single(Clean().Header("prgSaveRam", "8KiB").Header("battery", "false").Of(HeaderFindings.StatedWrong));
    }

    [Fact]
    public void A_cart_without_a_mapper_is_not_built() =>
        Assert.Single(new RomBench(new NesPlatform()).Program("prg", 0, Prg(32 * K)).Of(HeaderFindings.MissingField));

    [Fact]
    public void Magic_and_mark_cannot_be_changed()
    {
        Assert.Single(Clean().Header("magic", "4E455300").Of(HeaderFindings.StatedWrong));
        Assert.Single(Clean().Header("formatMark", "ines").Of(HeaderFindings.StatedWrong));
    }

    [Fact]
    public void The_exchange_file_is_a_nes_file() => Assert.Equal("nes", new NesPlatform().Extension(Clean().Assemble()));
}
