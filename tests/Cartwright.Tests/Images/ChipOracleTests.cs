using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>Chip files of whole builds against what GNU objcopy makes of the ROM file.</summary>
public sealed class ChipOracleTests
{
    [Fact]
    public void The_chips_of_two_lanes_are_what_objcopy_interleaves()
    {
        using var bench = new CartBench("\"board\": { \"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"lane\": \"high\" }, { \"site\": \"U2\", \"lane\": \"low\" } ] }");
        bench.Succeed();
        Tool.Succeed("objcopy", bench.In("dist"), "-I", "binary", "-O", "binary", "--interleave=2", "--byte=0", "lantern-tide.rom", "even.bin");
        Tool.Succeed("objcopy", bench.In("dist"), "-I", "binary", "-O", "binary", "--interleave=2", "--byte=1", "lantern-tide.rom", "odd.bin");
        var tree = bench.Tree();
        Assert.Equal(tree["even.bin"], tree["lantern-tide.U1.bin"]);
        Assert.Equal(tree["odd.bin"], tree["lantern-tide.U2.bin"]);
    }

    [Fact]
    public void The_chips_of_four_lanes_are_what_objcopy_interleaves()
    {
        using var bench = new CartBench("""
            "board": { "busWidth": 32, "sites": [ { "site": "U1", "lane": "d24-d31" }, { "site": "U2", "lane": "d16-d23" }, { "site": "U3", "lane": "high" }, { "site": "U4", "lane": "low" } ] }
            """);
        bench.Succeed();
        var tree = bench.Tree();
        for (var lane = 0; lane < 4; lane++)
        {
            Tool.Succeed("objcopy", bench.In("dist"), "-I", "binary", "-O", "binary", "--interleave=4", $"--byte={lane}", "lantern-tide.rom", "lane.out");
            Assert.Equal(Convert.ToHexString(File.ReadAllBytes(bench.In("dist/lane.out"))), tree[$"lantern-tide.U{lane + 1}.bin"]);
        }
    }

    [Fact]
    public void A_programmer_s_file_is_what_objcopy_reverses()
    {
        using var bench = new CartBench("\"board\": { \"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16 } ] }, \"images\": { \"wordOrder\": \"programmer\" }");
        bench.Succeed();
        Tool.Succeed("objcopy", bench.In("dist"), "-I", "binary", "-O", "binary", "--reverse-bytes=2", "lantern-tide.rom", "swapped.bin");
        var tree = bench.Tree();
        Assert.Equal(tree["swapped.bin"], tree["lantern-tide.U1.bin"]);
        Assert.NotEqual(tree["lantern-tide.rom"], tree["lantern-tide.U1.bin"]);
    }

    [Fact]
    public void The_text_formats_of_a_chip_hold_the_chip_s_bytes()
    {
        using var bench = new CartBench("\"board\": { \"sites\": [ { \"site\": \"U1\" } ], \"chips\": { \"U1\": { \"capacity\": \"128KiB\" } } }, \"images\": { \"formats\": [ \"raw\", \"intel-hex\", \"s-record\" ] }");
        bench.Succeed();
        Tool.Succeed("objcopy", bench.In("dist"), "-I", "ihex", "-O", "binary", "lantern-tide.U1.hex", "hex.out");
        Tool.Succeed("objcopy", bench.In("dist"), "-I", "srec", "-O", "binary", "lantern-tide.U1.srec", "srec.out");
        var tree = bench.Tree();
        Assert.Equal(128 << 10, tree["lantern-tide.U1.bin"].Length / 2);
        Assert.Equal(tree["lantern-tide.U1.bin"], tree["hex.out"]);
        Assert.Equal(tree["lantern-tide.U1.bin"], tree["srec.out"]);
    }
}
