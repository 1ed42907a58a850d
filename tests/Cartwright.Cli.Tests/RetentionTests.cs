using System.Text.Json;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>A save memory before and after its power was off, through the command.</summary>
public sealed class RetentionTests
{
    [Fact]
    public void What_was_kept_is_said_to_be_kept()
    {
        using var folder = new TempFolder();
        var (image, _) = Image(folder);
        var result = CommandRun.Here("pattern", "retention", image, image, image);
        Assert.Equal((ExitCode.Done, ""), (result.ExitCode, result.Errors));
        Assert.StartsWith("All 2 KiB kept.", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_lost_is_counted_apart_from_what_was_never_right()
    {
        using var folder = new TempFolder();
        var (image, bytes) = Image(folder);
        bytes[0x10] ^= 1;
        var before = Save(folder, "before.bin", bytes);
        (bytes[0x120], bytes[0x3FF]) = ((byte)(bytes[0x120] ^ 0xFF), (byte)(bytes[0x3FF] | 0x0F));
        var result = CommandRun.Here("pattern", "retention", image, before, Save(folder, "after.bin", bytes), "--json");
        Assert.Equal(ExitCode.Found, result.ExitCode);
        using var json = JsonDocument.Parse(result.Output);
        Assert.Equal((1, 2), (json.RootElement.GetProperty("wrongBefore").GetInt32(), json.RootElement.GetProperty("blocksChanged").GetInt32()));
        Assert.Equal(["CW9107", "CW9106"], json.RootElement.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("code").GetString()));
    }

    [Fact]
    public void A_memory_of_chance_has_forgotten_everything()
    {
        using var folder = new TempFolder();
        var (image, bytes) = Image(folder);
        new Random(3).NextBytes(bytes);
        var result = CommandRun.Here("pattern", "retention", image, image, Save(folder, "after.bin", bytes));
        Assert.Equal(ExitCode.Found, result.ExitCode);
        Assert.Contains("CW9106: The memory has forgotten everything", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_read_of_another_length_is_refused()
    {
        using var folder = new TempFolder();
        var (image, bytes) = Image(folder);
        var result = CommandRun.Here("pattern", "retention", image, image, Save(folder, "short.bin", bytes[..512]));
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW9105", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_file_than_a_memory_image_is_refused()
    {
        using var folder = new TempFolder();
        var (image, bytes) = Image(folder);
        bytes[0] ^= 1;
        var result = CommandRun.Here("pattern", "retention", Save(folder, "read.bin", bytes), image, image);
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW9109", result.Errors, StringComparison.Ordinal);
    }

    private static (string Path, byte[] Bytes) Image(TempFolder folder)
    {
        Assert.Equal(ExitCode.Done, CommandRun.Here("pattern", "memory", "--size", "2KiB", "--out", folder.Path).ExitCode);
        var path = Path.Combine(folder.Path, "memory.U1.bin");
        return (path, File.ReadAllBytes(path));
    }

    private static string Save(TempFolder folder, string name, byte[] bytes)
    {
        var path = Path.Combine(folder.Path, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
