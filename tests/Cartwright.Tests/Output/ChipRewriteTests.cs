using System.Text;
using Cartwright.Plans;
using Xunit;

namespace Cartwright.Tests.Output;

public sealed class ChipRewriteTests
{
    private const string Chip = "lantern-tide.U1.bin";
    private const string Record = "lantern-tide.record.json";

    // The header with its checksum lies in the first sector, the end of the program in the second, nothing in the third.
    private const string Board = """
        "board": { "sites": [ { "site": "U1", "fill": "erased" } ], "chips": { "U1": { "part": "Z99X", "sectors": "2x256 512" } } }
        """;

    [Fact]
    public void A_first_build_has_nothing_to_compare_with()
    {
        using var bench = new CartBench(Board);
        Assert.Empty(bench.Succeed().Rewrites);
    }

    [Fact]
    public void A_build_tells_which_sectors_are_not_what_they_were()
    {
        using var bench = new CartBench(Board);
        bench.Succeed();
        bench.Write("main.bin", Changed());
        var plan = Assert.Single(bench.Succeed().Rewrites).Plan!;
        Assert.Equal([0, 256, 512], plan.Steps.Select(static step => step.Start));
        Assert.NotEqual(WriteAction.Keep, plan.Steps[0].Action);
        Assert.Equal((WriteAction.Erase, 1), (plan.Steps[1].Action, plan.Steps[1].Changed));
        Assert.Equal(WriteAction.Keep, plan.Steps[2].Action);
    }

    [Fact]
    public void A_chip_that_is_what_it_was_is_told_as_such()
    {
        using var bench = new CartBench(Board);
        bench.Succeed();
        File.Delete(bench.In("dist/" + Chip));
        var rewrite = Assert.Single(bench.Succeed().Rewrites);
        Assert.Null(rewrite.Plan);
        Assert.Equal("U1", rewrite.Chip.Site.Name);
    }

    [Theory]
    [InlineData(Chip, null)]
    [InlineData(Chip, "not what the record says")]
    [InlineData(Record, null)]
    [InlineData(Record, "")]
    [InlineData(Record, "no JSON")]
    [InlineData(Record, "[]")]
    [InlineData(Record, "{ \"files\": 5 }")]
    [InlineData(Record, "{ \"files\": [ 5, { \"file\": 5, \"sha256\": [] }, { \"file\": \"lantern-tide.U1.bin\" } ] }")]
    [InlineData(Record, "{ \"files\": [ { \"file\": \"lantern-tide.U1.bin\", \"sha256\": \"00\" } ] }")]
    public void What_is_not_vouched_for_is_not_compared(string file, string? text)
    {
        using var bench = new CartBench(Board);
        bench.Succeed();
        File.Delete(bench.In("dist/" + file));
        if (text is not null)
        {
            bench.Write("dist/" + file, Encoding.UTF8.GetBytes(text));
        }

        bench.Write("main.bin", Changed());
        Assert.Empty(bench.Succeed().Rewrites);
    }

    [Theory]
    [InlineData("""{ "capacity": 1024 }""")]
    [InlineData("""{ "part": "Z99X", "capacity": 1024 }""")]
    [InlineData("""{ "part": "AT49F040" }""")]
    [InlineData("""{ "part": "MX29F400" }""")]
    public void Chips_whose_sectors_are_not_known_are_not_told_of(string chip)
    {
        using var bench = new CartBench($$"""
            "board": { "sites": [ { "site": "U1" } ], "chips": { "U1": {{chip}} } }
            """);
        bench.Succeed();
        bench.Write("main.bin", Changed());
        Assert.Empty(bench.Succeed().Rewrites);
    }

    [Fact]
    public void Top_or_bottom_is_taken_from_the_name_in_the_manifest()
    {
        using var bench = new CartBench("""
            "board": { "sites": [ { "site": "U1", "fill": "erased" } ], "chips": { "U1": { "part": "MX29F400T" } } }
            """);
        bench.Succeed();
        bench.Write("main.bin", Changed());
        Assert.Equal(65536, Assert.Single(bench.Succeed().Rewrites).Plan!.Steps[0].Length);
    }

    // One bit of the last byte rises.
    private static byte[] Changed()
    {
        var program = TestBytes.L(0x180);
        program[^1] ^= (byte)(1 << System.Numerics.BitOperations.TrailingZeroCount(~program[^1]));
        return program;
    }
}
