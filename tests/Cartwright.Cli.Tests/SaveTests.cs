using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>Saves through the command, held against objcopy of GNU binutils.</summary>
public sealed class SaveTests
{
    [Fact]
    public void An_expanded_save_is_packed_as_objcopy_takes_its_odd_bytes_and_comes_back()
    {
        Tool.Require("objcopy");
        using var folder = new TempFolder();
        var memory = new byte[0x2000];
        new Random(7).NextBytes(memory);
        folder.Write("chip.bin", memory);
        Assert.Equal(ExitCode.Done, Convert(folder, "chip.bin", "packed", "odd-ff", "game.sav"));
        Tool.Succeed("objcopy", folder.Path, "-I", "binary", "-O", "binary", "--interleave=2", "--byte=1", "game.sav", "lane.bin");
        Assert.Equal(memory, folder.Read("lane.bin"));
        Assert.Equal(ExitCode.Done, Convert(folder, "game.sav", "odd-ff", "packed", "back.bin"));
        Assert.Equal(memory, folder.Read("back.bin"));
    }

    [Fact]
    public void The_only_copy_is_never_written_over()
    {
        using var folder = new TempFolder();
        byte[] save = [.. Enumerable.Repeat((byte)0x5A, 0x2000)];
        folder.Write("game.sav", save);
        Assert.Equal(ExitCode.Refused, Convert(folder, "game.sav", "packed", "odd-ff", "game.sav"));
        Assert.Equal(save, folder.Read("game.sav"));
    }

    [Theory]
    [InlineData("plain", "CW9504")]
    [InlineData("odd-doubled+clock12", "CW9504")]
    public void An_unknown_layout_is_refused(string layout, string code)
    {
        using var folder = new TempFolder();
        folder.Write("game.sav", new byte[0x2000]);
        var result = CommandRun.Here("save", "convert", Path.Combine(folder.Path, "game.sav"), "--platform", "md", "--from", layout, "--to", "packed", "--out", Path.Combine(folder.Path, "new.sav"));
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains(code, result.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder.Path, "new.sav")));
    }

    private static int Convert(TempFolder folder, string file, string from, string to, string target) =>
        CommandRun.Here("save", "convert", Path.Combine(folder.Path, file), "--platform", "md", "--from", from, "--to", to, "--out", Path.Combine(folder.Path, target)).ExitCode;
}
