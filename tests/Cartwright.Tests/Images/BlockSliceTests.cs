using Cartwright.Boards;
using Cartwright.Tests.Boards;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>Chips that hold a part of each block of a region.</summary>
public sealed class BlockSliceTests
{
    private const string Dealt = """
        "sites": [
          { "site": "U1", "start": 0, "length": 2, "every": 8, "fill": "erased" },
          { "site": "U2", "start": 2, "length": 6, "every": 8, "fill": "erased" } ]
        """;

    [Theory]
    [InlineData("000102030405060708090A0B0C0D0E0F", "00010809", "0203040506070A0B0C0D0E0FFFFFFFFF")]
    [InlineData("0001020304050607", "0001", "020304050607FFFF")]
    [InlineData("000102030405060708", "000108FF", "020304050607FFFF")]
    [InlineData("0001020304050607080910", "00010809", "02030405060710FF")]
    public void Blocks_are_dealt(string region, string first, string second)
    {
        var bench = new BoardBench(Dealt);
        var chips = bench.Chips(BoardBench.Region(Convert.FromHexString(region)));
        Assert.False(bench.Log.HasErrors);
        Assert.Equal([first, second], chips.Select(chip => Convert.ToHexString(chip.Bytes.Span)));
    }

    [Fact]
    public void A_region_that_ends_before_a_slice_leaves_its_site_empty()
    {
        var bench = new BoardBench(Dealt);
        Assert.Single(bench.Chips(BoardBench.Region([1, 2])));
        Assert.Contains(BoardFindings.Unused.Code, bench.Codes);
    }

    // Two thirds of each block have a chip: bytes would be missing from the first block on.
    [Fact]
    public void A_gap_in_the_blocks_is_told()
    {
        var bench = new BoardBench("""
            "sites": [ { "site": "U1", "start": 0, "length": 2, "every": 6 }, { "site": "U2", "start": 4, "length": 2, "every": 6 } ]
            """);
        bench.Chips(BoardBench.Region(new byte[12]));
        var finding = Assert.Single(bench.Findings, finding => finding.Rule == BoardFindings.RomTooLarge);
        Assert.Contains("the first 0x000002 (2 bytes)", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"site\": \"U1\", \"length\": 2, \"every\": 2 }", false)]
    [InlineData("{ \"site\": \"U1\", \"length\": 4, \"every\": 2 }", true)]
    [InlineData("{ \"site\": \"U1\", \"start\": 1, \"length\": 2, \"every\": 2 }", true)]
    [InlineData("{ \"site\": \"U1\", \"every\": 2 }", true)]
    [InlineData("{ \"site\": \"U1\", \"length\": 1, \"every\": 0 }", true)]
    [InlineData("{ \"site\": \"U1\", \"length\": 2, \"every\": 4 }, { \"site\": \"U2\", \"start\": 2, \"length\": 2, \"every\": 4 }", false)]
    [InlineData("{ \"site\": \"U1\", \"length\": 2, \"every\": 4 }, { \"site\": \"U2\", \"start\": 1, \"length\": 2, \"every\": 4 }", true)]
    [InlineData("{ \"site\": \"U1\", \"length\": 2, \"every\": 4 }, { \"site\": \"U2\", \"start\": 2, \"length\": 2, \"every\": 8 }", true)]
    [InlineData("{ \"site\": \"U1\", \"length\": 2, \"every\": 4 }, { \"site\": \"U2\", \"start\": 8, \"length\": 2 }", true)]
    [InlineData("{ \"site\": \"U1\", \"start\": 2, \"length\": 2, \"every\": 4 }, { \"site\": \"U2\", \"start\": 0, \"length\": 2 }", false)]
    public void Slices_of_blocks_must_not_meet(string sites, bool told)
    {
        var bench = new BoardBench($"\"sites\": [ {sites} ]");
        Assert.Equal(told ? [BoardFindings.Contradiction.Code] : [], bench.Codes.Distinct());
    }
}
