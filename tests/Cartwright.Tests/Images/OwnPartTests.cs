using Cartwright.Chips;
using Cartwright.Tests.Boards;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>Parts that a manifest describes because the catalogue lacks them.</summary>
public sealed class OwnPartTests
{
    [Theory]
    [InlineData("\"capacity\": \"16KiB\"", 0x4000, "CW5012")]
    [InlineData("\"sectors\": \"16KiB\"", 0x4000, "CW5012")]
    [InlineData("\"capacity\": \"16KiB\", \"width\": 8", 0x4000, "CW5012")]
    [InlineData("\"capacity\": \"16KiB\", \"width\": \"8/16\", \"supply\": \"4.5 - 5.5 V\", \"sectors\": \"2x8KiB\"", 0x4000, "CW5012")]
    [InlineData("\"capacity\": \"16KiB\", \"width\": 16", 0x4000, "CW5012 CW5514")]
    [InlineData("\"capacity\": \"16KiB\", \"supply\": \"2.7-3.6\"", 0x4000, "CW5012 CW5503")]
    [InlineData("\"capacity\": \"16KiB\", \"supply\": \"3.3\"", 0x4000, "CW5012 CW5503")]
    [InlineData("\"capacity\": \"4KiB\", \"width\": 8", 0x2000, "CW5012 CW5512")]
    [InlineData("\"capacity\": \"16KiB\", \"width\": 12", 0x4000, "CW5012 CW5570")]
    [InlineData("\"capacity\": \"16KiB\", \"supply\": \"five\"", 0x4000, "CW5012 CW5570")]
    [InlineData("\"capacity\": \"16KiB\", \"supply\": \"50\"", 0x4000, "CW5012 CW5570")]
    [InlineData("\"capacity\": \"16KiB\", \"sectors\": \"many\"", 0x4000, "CW5012 CW5570")]
    [InlineData("\"capacity\": \"16KiB\", \"sectors\": \"8KiB\"", 0x4000, "CW5012 CW5570")]
    [InlineData("\"sectors\": \"many\"", 0x2000, "CW5501")]
    public void A_described_part_is_held_against_the_site(string chip, int capacity, string codes)
    {
        var bench = BoardBench.One("", $"\"U1\": {{ \"part\": \"Z99X\", {chip} }}");
        Assert.Equal(capacity, Assert.Single(bench.Chips(BoardBench.Region(new byte[0x1800]))).Capacity);
        Assert.Equal(codes, string.Join(' ', bench.Codes.Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void It_is_a_part_like_any_other()
    {
        var bench = BoardBench.One("", "\"U1\": { \"part\": \"Z99X\", \"width\": \"8/16\", \"supply\": \"4.5-5.5\", \"sectors\": \"2x8KiB\" }");
        var part = Assert.Single(bench.Chips(BoardBench.Region(new byte[0x1800]))).Part!;
        Assert.Equal(("Z99X", 0x4000L, PartDataBus.Selectable, "4.5-5.5"), (part.Name, part.CapacityBytes, part.DataBus, part.Supply.Text));
        Assert.Equal([new SectorGroup(2, 8192)], part.Sectors.Map);
        Assert.True(part.IsRom && part.ToleratesFiveVolts && part.Evidence is { SawCapacity: true, SawDataBus: true, SawSectors: true });
    }

    [Fact]
    public void Describing_a_part_of_the_catalogue_is_told()
    {
        var bench = BoardBench.One("", "\"U1\": { \"part\": \"SST39SF040\", \"width\": 8 }");
        Assert.Equal("SST39SF040", Assert.Single(bench.Chips(BoardBench.Region(new byte[0x1800]))).Part!.Name);
        Assert.Equal("CW5571", string.Join(' ', bench.Codes.Order(StringComparer.Ordinal)));
    }
}
