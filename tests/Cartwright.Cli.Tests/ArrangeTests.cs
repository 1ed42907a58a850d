using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>Chips and back through the command, held against objcopy of GNU binutils.</summary>
public sealed class ArrangeTests
{
    [Fact]
    public void Chips_of_two_lanes_are_those_objcopy_gives_and_come_back()
    {
        Tool.Require("objcopy");
        using var folder = new TempFolder();
        var image = new byte[0x400];
        new Random(5).NextBytes(image);
        "SEGA MEGA DRIVE "u8.CopyTo(image.AsSpan(0x100));
        File.WriteAllBytes(Path.Combine(folder.Path, "game.md"), image);
        Assert.Equal(ExitCode.Done, CommandRun.Here("arrange", Path.Combine(folder.Path, "game.md"), "--board", "md-double-8bit", "--out", folder.Path).ExitCode);
        for (var lane = 0; lane < 2; lane++)
        {
            Tool.Run("objcopy", folder.Path, "-I", "binary", "-O", "binary", "--interleave=2", $"--byte={lane}", "game.md", "lane.bin");
            Assert.Equal(File.ReadAllBytes(Path.Combine(folder.Path, "lane.bin")), File.ReadAllBytes(Path.Combine(folder.Path, $"game.U{lane + 1}.bin")));
        }

        string Chip(string site) => $"{site}={Path.Combine(folder.Path, $"game.{site}.bin")}";
        Assert.Equal(ExitCode.Done, CommandRun.Here("arrange", "back", "--board", "md-double-8bit", "--size", "1KiB", "--out", Path.Combine(folder.Path, "back.md"), Chip("U1"), Chip("U2")).ExitCode);
        Assert.Equal(image, File.ReadAllBytes(Path.Combine(folder.Path, "back.md")));
    }

    [Fact]
    public void A_chip_too_small_is_refused()
    {
        using var folder = new TempFolder();
        var chip = Path.Combine(folder.Path, "chip.bin");
        File.WriteAllBytes(chip, new byte[16]);
        var result = CommandRun.Here("arrange", "back", "--board", "md-double-8bit", "--size", "1KiB", "--out", Path.Combine(folder.Path, "back.md"), "U1=" + chip, "U2=" + chip);
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW8018", result.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder.Path, "back.md")));
    }
}
