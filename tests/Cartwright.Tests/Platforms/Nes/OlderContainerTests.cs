using Cartwright.Headers;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>What the iNES container can say and what it cannot. Source: NESdev Wiki, INES.</summary>
public sealed class OlderContainerTests
{
    [Theory]
    [InlineData("submapper", "2")]
    [InlineData("prgRam", "2KiB")]
    [InlineData("prgSaveRam", "2KiB")]
    [InlineData("chrRam", "32KiB")]
    [InlineData("chrSaveRam", "8KiB")]
    [InlineData("timing", "dendy")]
    [InlineData("timing", "multi-region")]
    [InlineData("consoleType", "extended")]
    [InlineData("vsPpu", "rp2c04-0002")]
    [InlineData("vsHardware", "dual-system")]
    [InlineData("extendedConsole", "vt02")]
    [InlineData("miscellaneousRoms", "1")]
    [InlineData("defaultExpansionDevice", "four-score")]
    [InlineData("mapper", "256")]
    public void A_value_it_cannot_say_is_an_error_at_the_field(string field, string value)
    {
        var finding = Assert.Single(Bench("uxrom", 32 * K, 0).Header("container", "ines").Header(field, value).Of(HeaderFindings.BadValue));
        Assert.Equal("header:" + field, finding.Place.Key);
        Assert.Contains(field, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("prgRam", "8KiB", "00", 0x00, 0x00)]
    [InlineData("prgRam", "32KiB", "04", 0x00, 0x00)]
    [InlineData("prgRam", "none", "00", 0x00, 0x10)]
    [InlineData("prgSaveRam", "8KiB", "00", 0x02, 0x00)]
    [InlineData("prgSaveRam", "32KiB", "04", 0x02, 0x00)]
    [InlineData("chrRam", "8KiB", "00", 0x00, 0x00)]
    [InlineData("submapper", "0", "00", 0x00, 0x00)]
    [InlineData("defaultExpansionDevice", "unspecified", "00", 0x00, 0x00)]
    public void A_value_it_can_say_is_written(string field, string value, string byte8, int battery, int byte10)
    {
        var header = Assert.Single(Bench("uxrom", 32 * K, 0).Header("container", "ines").Header(field, value).Assemble().Headers);
        Assert.Equal(byte8, header.Container[8].ToString("X2"));
        Assert.Equal(battery, header.Container[6] & 2);
        Assert.Equal((byte)byte10, header.Container[10]);
    }

    [Fact]
    public void Kept_and_forgetful_ram_together_cannot_be_said() =>
        Assert.Single(Clean().Header("container", "ines").Header("prgRam", "8KiB").Header("prgSaveRam", "8KiB").Of(HeaderFindings.BadValue));

    [Fact]
    public void Largest_sizes()
    {
        // 255 units of 16 KiB: one more, and only NES 2.0 says it.
        Assert.Equal("4080KiB", Bench("28", 4080 * K, 0).Header("container", "ines").Assemble()["prgSize"]);
        Assert.Single(Bench("28", 4096 * K, 0).Header("container", "ines").Of(Cartwright.Roms.RomFindings.TooLarge));
        Assert.Equal("4MiB", Bench("28", 4096 * K, 0).Assemble()["prgSize"]);
    }

    [Fact]
    public void A_size_between_the_units_needs_nes_2() =>
        Assert.Single(Bench("mmc3", 40 * K, 8 * K, 8 * K).Header("container", "ines").Size("prg", 40 * K).Of(Cartwright.Roms.RomFindings.IllegalSize));

    [Fact]
    public void Pal_and_vs_have_bits()
    {
        var cart = Clean().Header("container", "ines").Header("timing", "pal").Header("consoleType", "vs-system").Header("mapper", "99").Assemble();
        Assert.Equal("4E 45 53 1A 02 01 30 61 00 01 00 00 00 00 00 00", Header(cart));
    }

    [Fact]
    public void An_unknown_container_names_the_two() =>
        Assert.Contains("nes2", Assert.Single(Clean().Header("container", "nes3").Of(HeaderFindings.BadValue)).Expected, StringComparison.Ordinal);
}
