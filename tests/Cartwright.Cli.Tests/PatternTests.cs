using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>Test images through the command, held against objcopy of GNU binutils.</summary>
public sealed class PatternTests
{
    [Fact]
    public void The_chips_are_the_lanes_of_the_cartridge_that_objcopy_gives()
    {
        Tool.Require("objcopy");
        using var folder = new TempFolder();
        Assert.Equal(ExitCode.Done, CommandRun.Here("pattern", "signature", "--board", "md-double-8bit", "--size", "8KiB", "--out", folder.Path).ExitCode);
        for (var lane = 0; lane < 2; lane++)
        {
            Tool.Run("objcopy", folder.Path, "-I", "binary", "-O", "binary", "--interleave=2", $"--byte={lane}", "signature.cartridge.rom.bin", "lane.bin");
            Assert.Equal(File.ReadAllBytes(Path.Combine(folder.Path, "lane.bin")), File.ReadAllBytes(Path.Combine(folder.Path, $"signature.U{lane + 1}.bin")));
        }
    }

    [Fact]
    public void Without_a_board_or_a_chip_it_asks_for_one()
    {
        var result = CommandRun.Here("pattern", "signature");
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW9108", result.Errors, StringComparison.Ordinal);
    }
}
