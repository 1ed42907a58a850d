using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>No image is ever lost to mending.</summary>
public sealed class MendTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_image_itself_stays_as_it_was()
    {
        var image = Image();
        var before = File.ReadAllBytes(image);
        Assert.Equal(ExitCode.Done, CommandRun.Here("mend", image).ExitCode);
        Assert.Equal(before, File.ReadAllBytes(image));
        Assert.Equal(ExitCode.Done, CommandRun.Here("mend", "--check", image.Replace("game", "game.mended", StringComparison.Ordinal)).ExitCode);
    }

    [Fact]
    public void In_place_the_earlier_image_is_kept_and_never_written_over()
    {
        var image = Image();
        var before = File.ReadAllBytes(image);
        Assert.Equal(ExitCode.Done, CommandRun.Here("mend", "--in-place", image).ExitCode);
        Assert.Equal(before, File.ReadAllBytes(image + ".before"));
        File.WriteAllBytes(image, before);
        var again = CommandRun.Here("mend", "--in-place", image);
        Assert.Equal(ExitCode.Refused, again.ExitCode);
        Assert.Contains("CW8010", again.Errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(image));
    }

    [Fact]
    public void A_checksum_the_image_does_not_have_is_refused() =>
        Assert.Contains("CW8011", CommandRun.Here("mend", Image(), "--also", "sum").Errors, StringComparison.Ordinal);

    [Fact]
    public void Nothing_is_written_over_code_in_the_header_s_place()
    {
        var image = Path.Combine(_folder.Path, "code.sms");
        File.WriteAllBytes(image, [.. Enumerable.Repeat((byte)0xC9, 0x8000)]);
        var result = CommandRun.Here("mend", "--in-place", image, "--platform", "sms");
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW8023", result.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(image + ".before"));
    }

    [Theory]
    [InlineData("mend")]
    [InlineData("examine")]
    public void A_file_that_is_not_there_is_refused(string verb)
    {
        var result = CommandRun.Here(verb, Path.Combine(_folder.Path, "none.gg"));
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW8012", result.Errors, StringComparison.Ordinal);
    }

    // A Game Gear ROM without its checksum.
    private string Image()
    {
        var bytes = new byte[0x8000];
        "TMR SEGA"u8.CopyTo(bytes.AsSpan(0x7FF0));
        bytes[0x100] = 0x55;
        bytes[0x7FFF] = 0x7C;
        var path = Path.Combine(_folder.Path, "game.gg");
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
