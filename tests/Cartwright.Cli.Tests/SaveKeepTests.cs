using System.Text.Json;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests;

/// <summary>Saves kept and compared, and the life of the cell, through the command.</summary>
public sealed class SaveKeepTests
{
    [Fact]
    public void A_number_without_its_unit_is_refused()
    {
        var result = CommandRun.Here("save", "battery", "--capacity", "225", "--current", "3uA");
        Assert.Equal((ExitCode.Refused, ""), (result.ExitCode, result.Output));
        Assert.Contains("CW9530", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void One_file_is_not_two_reads()
    {
        using var folder = new TempFolder();
        var file = Save(folder, "read.sav", 8192);
        var result = CommandRun.Here("save", "keep", InFolder(folder, "saves"), file, file, "--unit", "000101");
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW9539", result.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(InFolder(folder, "saves")));
    }

    [Fact]
    public void A_day_in_another_order_is_refused()
    {
        using var folder = new TempFolder();
        var result = CommandRun.Here("save", "keep", InFolder(folder, "saves"), Save(folder, "read.sav", 8192), "--unit", "000101", "--date", "25.11.2026");
        Assert.Equal(ExitCode.Refused, result.ExitCode);
        Assert.Contains("CW9546", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_day_is_that_of_the_file_where_none_is_given()
    {
        using var folder = new TempFolder();
        var file = Save(folder, "read.sav", 8192);
        File.SetLastWriteTimeUtc(file, new DateTime(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc));
        Assert.Equal(ExitCode.Done, CommandRun.Here("save", "keep", InFolder(folder, "saves"), file, "--unit", "000101").ExitCode);
        var listed = CommandRun.Here("save", "keep", InFolder(folder, "saves"), "--list", "--json");
        using var json = JsonDocument.Parse(listed.Output);
        var generation = json.RootElement.GetProperty("generations")[0];
        Assert.Equal(("2001-02-03", "file", "one"), (generation.GetProperty("date").GetString(), generation.GetProperty("dateFrom").GetString(), generation.GetProperty("reads").GetString()));
    }

    [Fact]
    public void Saves_of_different_lengths_are_told()
    {
        using var folder = new TempFolder();
        var result = CommandRun.Here("save", "compare", Save(folder, "a.sav", 8192), Save(folder, "b.sav", 16384), "--json");
        Assert.Equal(ExitCode.Done, result.ExitCode);
        using var json = JsonDocument.Parse(result.Output);
        Assert.False(json.RootElement.GetProperty("same").GetBoolean());
        Assert.Equal("CW9548", json.RootElement.GetProperty("findings")[0].GetProperty("code").GetString());
    }

    private static string InFolder(TempFolder folder, string name) => Path.Combine(folder.Path, name);

    private static string Save(TempFolder folder, string name, int length)
    {
        var bytes = new byte[length];
        bytes[0] = 0x51;
        File.WriteAllBytes(InFolder(folder, name), bytes);
        return InFolder(folder, name);
    }
}
