using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>Adopting never writes into a folder that holds anything.</summary>
public sealed class AdoptTests
{
    [Fact]
    public void A_folder_in_use_is_refused()
    {
        using var folder = new TempFolder();
        var image = Path.Combine(folder.Path, "game.bin");
        var bytes = new byte[0x8000];
        "TMR SEGA"u8.CopyTo(bytes.AsSpan(0x7FF0));
        bytes[0x7FFF] = 0x7C;
        File.WriteAllBytes(image, bytes);
        var first = CommandRun.Here("adopt", image);
        Assert.Equal(ExitCode.Done, first.ExitCode);
        Assert.Equal(ExitCode.Done, CommandRun.Here("build", Path.Combine(folder.Path, "game")).ExitCode);
        Assert.Equal(bytes, File.ReadAllBytes(Path.Combine(folder.Path, "game", "dist", "game.gg")));
        var second = CommandRun.Here("adopt", image);
        Assert.Equal(ExitCode.Refused, second.ExitCode);
        Assert.Contains("CW8017", second.Errors, StringComparison.Ordinal);
    }
}
