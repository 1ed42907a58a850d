using System.Collections.Immutable;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Plans;
using Xunit;

namespace Cartwright.Tests.Plans;

public sealed class PlanChecksTests
{
    [Theory]
    [InlineData("HM628128", null, null, "CW5710")]
    [InlineData("MX29F400", null, null, "CW5701")]
    [InlineData("M29W640GT", null, null, "CW5702")]
    [InlineData("AT49F040", null, null, "CW5702")]
    [InlineData("SST39SF040", 16, null, "CW5711")]
    [InlineData("SST39SF040", null, "127x4KiB", "CW5703")]
    [InlineData("MX29F400", null, "1x524287 1x1", "CW5703")]
    public void A_chip_that_is_not_known_well_enough_is_refused(string name, int? width, string? sectors, string code)
    {
        var log = new FindingLog();
        Assert.Null(Target(name, log, width, sectors));
        Assert.Equal(code, Assert.Single(log.ToSorted()).Code);
    }

    [Theory]
    [InlineData("SST39SF040", "")]
    [InlineData("MX29F800T", "CW5705")]
    [InlineData("S29GL064N", "CW5705 CW5706")]
    [InlineData("M29W640GH", "CW5706")]
    [InlineData("M27C801", "")]
    [InlineData("24C32", "")]
    public void What_is_doubtful_about_the_sectors_is_told(string name, string codes)
    {
        var log = new FindingLog();
        Assert.NotNull(Target(name, log));
        Assert.Equal(codes, string.Join(' ', log.ToSorted().Select(static finding => finding.Code)));
        Assert.False(log.HasErrors);
    }

    [Fact]
    public void A_capacity_from_memory_gives_way_to_stated_sectors()
    {
        var log = new FindingLog();
        Assert.Equal(2 << 20, SectorGroup.TotalOf(Target("MX29F800T", log, sectors: "32x64KiB")!.Map));
        Assert.Equal(0, log.Count);
    }

    [Fact]
    public void Files_of_another_length_than_the_chip_are_refused_one_by_one()
    {
        var log = new FindingLog();
        Assert.Null(PlanChecks.Plan(Target("SST39SF010A", log)!, new PlanContents("old", new byte[100]), new PlanContents("new", new byte[131073]), log));
        Assert.Equal(["new", "old"], log.ToSorted().Select(static finding => finding.Place.File));
        Assert.All(log.ToSorted(), static finding => Assert.Same(PlanFindings.NotWhole, finding.Rule));
    }

    [Theory]
    [InlineData("AT27C010", 0x0F, 0xF0, "CW5704", false)]
    [InlineData("AT27C010", 0xFF, 0xF0, "", true)]
    [InlineData("M27C1001", 0x0F, 0xF0, "", true)]
    [InlineData("S29GL128S", 0xF7, 0xF0, "CW5705 CW5709", true)]
    [InlineData("S29GL128S", 0xFF, 0xF0, "CW5705", true)]
    [InlineData("S29GL128N", 0xF7, 0xF0, "", true)]
    [InlineData("S29GL128S", 0x0F, 0xF0, "CW5705", true)]
    public void What_stands_against_a_plan_is_told(string name, byte old, byte wanted, string codes, bool isPossible)
    {
        var log = new FindingLog();
        var target = Target(name, log)!;
        var size = (int)SectorGroup.TotalOf(target.Map);
        var plan = PlanChecks.Plan(target, Filled("old", size, old), Filled("new", size, wanted), log)!;
        Assert.Equal(isPossible, plan.IsPossible);
        Assert.Equal(codes, string.Join(' ', log.ToSorted().Select(static finding => finding.Code).Order(StringComparer.Ordinal)));
    }

    // Sectors of 4 KiB; what stands around a change is programmed, or blank.
    [Theory]
    [InlineData(0x5010, 4, 0x00, "CW5707")]
    [InlineData(0x5000, 0x1000, 0x00, "")]
    [InlineData(0x5010, 4, 0xFF, "")]
    [InlineData(0x5FFC, 8, 0x00, "CW5707 CW5708")]
    [InlineData(0x5800, 0x1000, 0x00, "CW5708")]
    [InlineData(0x5800, 0x1800, 0x00, "")]
    public void Areas_that_could_be_placed_better_are_told(int at, int length, byte around, string codes)
    {
        var log = new FindingLog();
        var target = Target("SST39SF010A", log)!;
        var old = Enumerable.Repeat(around, 131072).ToArray();
        var wanted = old.ToArray();
        old.AsSpan(at, length).Fill(0x22);
        wanted.AsSpan(at, length).Fill(0x44);
        Assert.NotNull(PlanChecks.Plan(target, new PlanContents("old", old), new PlanContents("new", wanted), log));
        Assert.Equal(codes, string.Join(' ', log.ToSorted().Select(static finding => finding.Code)));
    }

    [Fact]
    public void A_list_names_each_sector_in_order()
    {
        var target = Target("MX29F001T", new FindingLog())!;
        var wanted = PlanContents.Blank(131072).Bytes.ToArray();
        var old = wanted.ToArray();
        (old[0], wanted[0x1E000]) = (0x00, 0x12);
        var lines = SectorList.Write(WritePlanner.Plan(target, old, wanted), "MX29F001T").TrimEnd('\n').Split('\n');
        Assert.Equal(["# Sectors to rewrite: action, first byte, length", "# MX29F001T, 131072 bytes"], lines[..2]);
        Assert.Equal(
            ["erase 0x000000 0x10000", "keep 0x010000 0x8000", "keep 0x018000 0x2000", "keep 0x01A000 0x2000", "keep 0x01C000 0x1000", "keep 0x01D000 0x1000", "program 0x01E000 0x2000"],
            lines[2..]);
    }

    private static PlanContents Filled(string name, int size, byte value) => new(name, Enumerable.Repeat(value, size).ToArray());

    private static WriteTarget? Target(string name, FindingLog log, int? width = null, string? sectors = null)
    {
        var map = ImmutableArray<SectorGroup>.Empty;
        Assert.True(sectors is null || SectorMapText.TryParse(sectors, out map));
        return PlanChecks.Target(PartCatalog.BuiltIn.Find(name)!, name, new PlanOptions(null, map, width), default, log);
    }
}
