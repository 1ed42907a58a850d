using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Plans;
using Xunit;

namespace Cartwright.Tests.Plans;

public sealed class WriteTimeTests
{
    // Full chips without a blank byte, by the typical figures of their data sheets: SST39SF0x0, Am29LV040B, W29EE011, M27C801, M27C322,
    // 28F128J3A, M29W640G. Three of them state about 8 s, 10 s and 100 s themselves.
    [Theory]
    [InlineData("SST39SF040", null, 2.304, 7.340, 7.410)]
    [InlineData("Am29LV040B", null, 5.6, 4.719, 15.719)]
    [InlineData("W29EE011", null, 0, 10.24, null)]
    [InlineData("M27C801", null, 0, 52.429, null)]
    [InlineData("M27C322", null, 0, 104.858, null)]
    [InlineData("28F128J3A", null, 128, 114.085, null)]
    [InlineData("M29W640GH", null, 64, 41.943, null)]
    [InlineData("S29GL128N", null, 64, 125.829, 189.829)]
    [InlineData("MX29F400T", 8, 11, 3.670, 7.670)]
    [InlineData("MX29F400T", 16, 11, 3.146, 7.146)]
    [InlineData("W27C512", null, 0.1, 6.554, null)]
    [InlineData("AT28C256", null, 0, 5.12, null)]
    [InlineData("24C16", null, 0, 0.64, null)]
    [InlineData("FM1808", null, 0, 0, null)]
    public void A_whole_chip_takes_what_its_figures_say(string name, int? width, double erase, double program, double? wholeChip)
    {
        var part = PartCatalog.BuiltIn.Find(name)!;
        var target = PlanChecks.Target(part, name, PlanOptions.None with { Width = width }, default, new FindingLog())!;
        var old = new byte[part.CapacityBytes];
        var wanted = new byte[part.CapacityBytes];
        wanted.AsSpan().Fill(0x5A);
        var plan = WritePlanner.Plan(target, old, wanted);
        Assert.Equal(erase, plan.EraseTime!.Value.TotalSeconds, 3);
        Assert.Equal(program, plan.ProgramTime!.Value.TotalSeconds, 3);
        Assert.Equal(erase + program, plan.Time!.Value.TotalSeconds, tolerance: 0.01);
        Assert.Equal(wholeChip, plan.WholeChipTime is { } time ? Math.Round(time.TotalSeconds, 3) : null);
    }

    // Nine erased sectors, three programmed on top, 30000 bytes: 9 x 18 ms + 30000 x 14 us.
    [Fact]
    public void A_small_change_of_a_large_chip_takes_a_fraction()
    {
        var part = PartCatalog.BuiltIn.Find("SST39SF040")!;
        var target = PlanChecks.Target(part, part.Name, PlanOptions.None, default, new FindingLog())!;
        var old = new byte[part.CapacityBytes];
        old.AsSpan().Fill(0xF0);
        old.AsSpan(100 * 4096).Fill(0xFF);
        var wanted = old.ToArray();
        for (var sector = 0; sector < 9; sector++)
        {
            wanted.AsSpan(sector * 4096, 4096).Fill(0xFF);
            wanted.AsSpan(sector * 4096, 3000).Fill(0x0F);
        }

        for (var sector = 100; sector < 103; sector++)
        {
            wanted.AsSpan(sector * 4096, 1000).Fill(0x55);
        }

        var plan = WritePlanner.Plan(target, old, wanted);
        Assert.Equal((9, 3, 116), (plan.Count(WriteAction.Erase), plan.Count(WriteAction.Program), plan.Count(WriteAction.Keep)));
        Assert.Equal(30000, plan.Programmed);
        Assert.Equal(0.162 + 0.42, plan.Time!.Value.TotalSeconds, 3);
        Assert.Equal(0.162, plan.EraseTime!.Value.TotalSeconds, 3);
        Assert.False(plan.IsNothing);
    }

    [Fact]
    public void What_is_not_known_is_not_invented()
    {
        var part = DescribedPart.Of("own", 8192, PartDataBus.Eight, null, [new SectorGroup(2, 4096)]);
        var plan = WritePlanner.Plan(WriteTarget.Of(part, part.Sectors.Map, 8), new byte[8192], new byte[8192]);
        Assert.True(plan.IsNothing);
        Assert.Equal(TimeSpan.Zero, plan.Time);
        plan = WritePlanner.Plan(plan.Target, new byte[8192], [.. Enumerable.Repeat((byte)1, 8192)]);
        Assert.Null(plan.EraseTime);
        Assert.Null(plan.ProgramTime);
        Assert.Null(plan.Time);
        Assert.Null(plan.WholeChipTime);
    }

    [Fact]
    public void Every_figure_of_the_catalogue_is_read() => Assert.All(PartCatalog.BuiltIn.All, part =>
    {
        foreach (var width in new[] { 8, 16 }.Where(part.Supports))
        {
            var figures = WriteFigures.Of(part, width);
            Assert.True(
                figures.UnitMicroseconds is not null || figures.BurstMicroseconds is not null
                || part.Programming.TypicalMicroseconds.Length == 0 || (width == 8 && part.Programming.TypicalMicroseconds.EndsWith(" word", StringComparison.Ordinal)),
                part.Name);
            Assert.Equal(part.Sectors.TypicalSectorEraseMilliseconds is not ("" or "inside the page write"), figures.SectorMilliseconds is not null);
            Assert.Equal(part.Sectors.TypicalChipEraseMilliseconds.Length > 0, figures.ChipMilliseconds is not null);
        }
    });

    [Theory]
    [InlineData("byte/word; 32-byte buffer", 32)]
    [InlineData("1-64 byte page", 64)]
    [InlineData("128-byte (64-word) page", 128)]
    [InlineData("byte/word; 4-word", 0)]
    [InlineData("byte (bus speed)", 0)]
    [InlineData("", 0)]
    public void The_size_of_a_page_is_read(string granularity, int bytes) => Assert.Equal(bytes, WriteFigures.BurstOf(granularity));
}
