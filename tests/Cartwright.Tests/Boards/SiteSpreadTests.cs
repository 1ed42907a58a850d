using Cartwright.Boards;
using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Boards;

/// <summary>Sites whose lines leave gaps between the parts of a ROM.</summary>
public sealed class SiteSpreadTests
{
    [Theory]
    [InlineData(12, "CW5015")]
    [InlineData(2, "CW5015")]
    [InlineData(16, null)]
    [InlineData(8, null)]
    public void A_ROM_must_have_whole_blocks(int length, string? code)
    {
        var bench = BoardBench.One(""", "blocks": 8, "blockStep": 2""", """ "U1": { "part": "own", "capacity": 16 } """);
        var chips = bench.Chips(BoardBench.Region(TestBytes.L(length)));
        Assert.Equal(code is null, !chips.IsEmpty);
        Assert.Equal(code is null ? [BoardFindings.OwnPart.Code] : [BoardFindings.UnevenBlocks.Code], bench.Codes);
        Assert.Equal("CW5015", BoardFindings.UnevenBlocks.Code);
    }

    [Fact]
    public void Keys_of_a_site_reach_it()
    {
        var site = Assert.Single(BoardBench.One(""", "blocks": 256, "blockStep": "2KiB" """).Board!.Sites);
        Assert.Equal((256, 2048L, null), (site.Blocks, site.BlockStep, site.RestAt));
        Assert.Equal(512L << 10, Assert.Single(BoardBench.One(""", "restAt": "512KiB" """).Board!.Sites).RestAt);
    }

    // Six units whose rest is selected from the ninth on; the chip repeats what is seen.
    [Fact]
    public void The_rest_lies_where_its_line_selects_it()
    {
        var bench = BoardBench.One(""", "fill": "repeat", "restAt": 8""", """ "U1": { "part": "own", "capacity": 16 } """);
        Assert.Equal("00010203000102030405040504050405", Convert.ToHexString(Assert.Single(bench.Chips(BoardBench.Region([0, 1, 2, 3, 4, 5]))).Bytes.Span));
    }

    [Fact]
    public void A_chip_without_room_for_the_rest_is_refused()
    {
        var bench = BoardBench.One(""", "fill": "repeat", "restAt": 8""", """ "U1": { "part": "own", "capacity": 8 } """);
        bench.Chips(BoardBench.Region([0, 1, 2, 3, 4, 5]));
        Assert.Contains(PartFindings.TooSmall.Code, bench.Codes);
    }
}
