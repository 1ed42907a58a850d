using Cartwright.Cli.Tests.Cases;
using Cartwright.Platforms;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Templates;

/// <summary>Carts to start from, made and built.</summary>
public sealed class NewCartTests
{
    public static TheoryData<string> Platforms => [.. PlatformCatalog.BuiltIn.All.Select(static platform => platform.Facts.Id)];

    [Theory]
    [MemberData(nameof(Platforms))]
    public void It_builds_to_the_approved_record(string platform)
    {
        using var folder = new TempFolder();
        var cart = Path.Combine(folder.Path, "my-game");
        var made = CommandRun.Here("new", platform, cart);
        Assert.Equal((0, ""), (made.ExitCode, made.Errors));

        var built = CommandRun.Here("build", cart);

        Assert.True(built.ExitCode == 0, built.Errors);
        Approved.Equal($"tests/cases/templates/{platform}.record.json", File.ReadAllText(Path.Combine(cart, "dist", "my-game.record.json")));
    }

    [Theory]
    [MemberData(nameof(Platforms))]
    public void Its_program_is_what_its_source_assembles_to(string platform)
    {
        using var folder = new TempFolder();
        CommandRun.Here("new", platform, folder.Path);
        var program = Snapshot.Of(Path.Combine(folder.Path, "out"));
        var again = Path.Combine(folder.Path, "again");

        var result = Tool.Run("sh", folder.Path, "rebuild.sh", again);

        Assert.SkipWhen(result.ExitCode == 3, result.Error.Trim());
        Assert.True(result.ExitCode == 0, result.Error);
        Assert.Empty(program.Differences(Snapshot.Of(again), new Redaction(folder.Path)));
    }

    [Fact]
    public void The_name_and_the_title_stand_wherever_they_belong()
    {
        using var folder = new TempFolder();
        var cart = Path.Combine(folder.Path, "harbour");
        Assert.Equal(0, CommandRun.Here("new", "game-boy", cart, "--title", "HARBOUR").ExitCode);

        Assert.True(File.Exists(Path.Combine(cart, "harbour.csproj")));
        Assert.Contains("dist/harbour.record.json:", File.ReadAllText(Path.Combine(cart, "Makefile")), StringComparison.Ordinal);
        var manifest = File.ReadAllText(Path.Combine(cart, "cart.json"));
        Assert.Contains("\"name\": \"harbour\"", manifest, StringComparison.Ordinal);
        Assert.Contains("\"title\": \"HARBOUR\"", manifest, StringComparison.Ordinal);
        Assert.Contains("\"platform\": \"gb\"", manifest, StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_with_a_quotation_mark_leaves_the_manifest_whole()
    {
        using var folder = new TempFolder();
        Assert.Equal(0, CommandRun.Here("new", "gb", folder.Path, "--title", "SAY \"SEA\"").ExitCode);
        using var manifest = System.Text.Json.JsonDocument.Parse(File.ReadAllText(Path.Combine(folder.Path, "cart.json")), new() { CommentHandling = System.Text.Json.JsonCommentHandling.Skip });
        Assert.Equal("SAY \"SEA\"", manifest.RootElement.GetProperty("cart").GetProperty("title").GetString());
    }

    [Fact]
    public void A_folder_in_use_is_left_as_it_is()
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "cart.json"), "mine");
        var before = Snapshot.Of(folder.Path);

        var refused = CommandRun.Here("new", "gb", folder.Path);

        Assert.Equal(2, refused.ExitCode);
        Assert.Contains("error CW8017", refused.Errors, StringComparison.Ordinal);
        Assert.Empty(before.Differences(Snapshot.Of(folder.Path), new Redaction(folder.Path)));
    }

    [Fact]
    public void Its_makefile_builds_it_and_then_has_nothing_to_do()
    {
        Tool.Require("make");
        using var folder = new TempFolder();
        CommandRun.Here("new", "gb", folder.Path, "--name", "my-game");
        var command = $"CARTWRIGHT=dotnet {typeof(Program).Assembly.Location}";

        Tool.Succeed("make", folder.Path, command);

        Assert.True(File.Exists(Path.Combine(folder.Path, "dist", "my-game.record.json")));
        Tool.Succeed("make", folder.Path, command, "--question");
        File.AppendAllText(Path.Combine(folder.Path, "out", "lantern.ihx"), "\n");
        Assert.Equal(1, Tool.Run("make", folder.Path, command, "--question").ExitCode);
    }
}
