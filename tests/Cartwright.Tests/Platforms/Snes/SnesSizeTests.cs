using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Snes;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.Snes;

public sealed class SnesSizeTests
{
    private const int Mbit = 0x20000;

    // Sizes by fullsnes, cartridge chapters: single chips, and sums of two.
    [Theory]
    [InlineData("lorom", 1, 0x8000)]
    [InlineData("lorom", 0x8001, 0x10000)]
    [InlineData("hirom", 1, 0x10000)]
    [InlineData("hirom", 0x20001, 0x40000)]
    [InlineData("lorom", 0x100001, 10 * Mbit)]
    [InlineData("hirom", 11 * Mbit, 12 * Mbit)]
    [InlineData("hirom", 13 * Mbit, 16 * Mbit)]
    [InlineData("lorom", 17 * Mbit, 20 * Mbit)]
    [InlineData("lorom", 21 * Mbit, 24 * Mbit)]
    [InlineData("lorom", 25 * Mbit, 32 * Mbit)]
    [InlineData("exhirom", 1, 40 * Mbit)]
    [InlineData("exlorom", 41 * Mbit, 48 * Mbit)]
    [InlineData("exlorom", 49 * Mbit, 64 * Mbit)]
    public void Fit_takes_the_next_customary_size(string mapping, long needed, long size) =>
        Assert.Equal(size, Rule(mapping).Fit(needed));

    [Theory]
    [InlineData("lorom", (32 * Mbit) + 1)]
    [InlineData("hirom", (32 * Mbit) + 1)]
    [InlineData("exhirom", (64 * Mbit) + 1)]
    public void Nothing_fits_more_than_the_largest(string mapping, long needed) => Assert.Null(Rule(mapping).Fit(needed));

    [Theory]
    [InlineData("lorom", 0x18000, true)]
    [InlineData("lorom", 0x1C0000, true)]
    [InlineData("lorom", 0x400000, true)]
    [InlineData("lorom", 0x408000, false)]
    [InlineData("lorom", 0x9000, false)]
    [InlineData("lorom", 0, false)]
    [InlineData("hirom", 0x30000, true)]
    [InlineData("hirom", 0x8000, false)]
    [InlineData("hirom", 0x18000, false)]
    [InlineData("exlorom", 0x400000, false)]
    [InlineData("exlorom", 0x408000, true)]
    [InlineData("exhirom", 0x408000, false)]
    [InlineData("exhirom", 0x410000, true)]
    [InlineData("exhirom", 0x810000, false)]
    public void Stated_sizes_are_whole_banks(string mapping, long size, bool legal) => Assert.Equal(legal, Rule(mapping).Allows(size));

    // Smallest n with 1024 << n at least the size: 3 MiB is $0C.
    [Theory]
    [InlineData("lorom", 0x8000, 0x05, "32KiB")]
    [InlineData("lorom", 0x10000, 0x06, "64KiB")]
    [InlineData("lorom", 0x18000, 0x07, "128KiB")]
    [InlineData("hirom", 0x300000, 0x0C, "4MiB")]
    [InlineData("exhirom", 0x500000, 0x0D, "8MiB")]
    public void The_size_code_is_rounded_up(string name, long size, byte code, string text)
    {
        var mapping = SnesMapping.Named(name);
        var cart = SnesBench.Clean(mapping).Size("rom", size).Assemble();
        Assert.Equal(code, cart.Bytes("rom")[mapping.Header + 0x27]);
        Assert.Equal(text, cart["romSize"]);
    }

    [Fact]
    public void A_size_code_rounded_down_is_an_error()
    {
        var bench = SnesBench.Clean(SnesMapping.Hirom).Size("rom", 24 * Mbit).Header("romSize", "2MiB");
        Assert.NotNull(bench.TryAssemble());
        Assert.Equal(1, bench.Count(HeaderFindings.StatedWrong));
    }

    private static SizeRule Rule(string mapping) =>
        PlatformCatalog.BuiltIn.Find("snes")!.Layouts.Single(layout => layout.Variant == mapping).Regions[0].Sizes;
}
