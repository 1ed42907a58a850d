using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class PartFiguresTests
{
    [Theory]
    [InlineData("4.5-5.5", 4.5, 5.5)]
    [InlineData("1.8-5.5 (grade dependent)", 1.8, 5.5)]
    public void A_supply_range_is_read(string text, double min, double max)
    {
        Assert.True(PartFigures.TryVolts(text, out var volts));
        Assert.Equal((min, max), volts);
    }

    [Theory]
    [InlineData("")]
    [InlineData("5")]
    [InlineData("5.5-4.5")]
    [InlineData("4.5-")]
    [InlineData("4,5-5,5")]
    public void No_supply_range_is_refused(string text) => Assert.False(PartFigures.TryVolts(text, out _));

    [Theory]
    [InlineData("", new int[0])]
    [InlineData("55;70", new[] { 55, 70 })]
    [InlineData("45;55;70;90;120 (E); 70;150 (C)", new[] { 45, 55, 70, 90, 120, 150 })]
    [InlineData("70;90 (older 90;120)", new[] { 70, 90 })]
    [InlineData("70 (130 cycle)", new[] { 70 })]
    [InlineData("150 cycle", new int[0])]
    public void Access_times_outside_brackets_are_read(string text, int[] expected)
    {
        Assert.True(PartFigures.TryAccess(text, out var grades));
        Assert.Equal(expected, grades);
    }

    [Theory]
    [InlineData("fast")]
    [InlineData("70 (90")]
    [InlineData("0")]
    public void No_access_time_is_refused(string text) => Assert.False(PartFigures.TryAccess(text, out _));

    [Theory]
    [InlineData("", null)]
    [InlineData("n/a", null)]
    [InlineData("unlimited", null)]
    [InlineData("100000", 100_000L)]
    [InlineData("1000 or 10000", 1_000L)]
    [InlineData("100000 to 1000000", 100_000L)]
    [InlineData("1e14", 100_000_000_000_000L)]
    public void The_lowest_endurance_is_read(string text, long? cycles)
    {
        Assert.True(PartFigures.TryEndurance(text, out var endurance));
        Assert.Equal(new PartEndurance(text, cycles, text == "unlimited"), endurance);
    }

    [Theory]
    [InlineData("many")]
    [InlineData("0")]
    [InlineData("-5")]
    [InlineData("1e40")]
    public void No_endurance_is_refused(string text) => Assert.False(PartFigures.TryEndurance(text, out _));

    [Fact]
    public void A_sector_map_is_read()
    {
        Assert.True(PartFigures.TrySectorMap("1*16384;2*8192;1*32768", out var map));
        Assert.Equal([new SectorGroup(1, 16384), new SectorGroup(2, 8192), new SectorGroup(1, 32768)], map);
    }

    [Theory]
    [InlineData("16384")]
    [InlineData("0*4096")]
    [InlineData("1*4096;")]
    [InlineData("a*b")]
    public void No_sector_map_is_refused(string text) => Assert.False(PartFigures.TrySectorMap(text, out _));
}
