using System.Text.Json;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>The script of <c>examples/pipeline</c>, run as a build service would.</summary>
public sealed class PipelineTests
{
    private static readonly string Script = Path.Combine(Approved.Root, "examples", "pipeline", "cart.sh");

    [Fact]
    public void A_cart_is_built_with_its_digests_and_findings()
    {
        using var folder = new TempFolder();

        var run = Run(folder, Path.Combine(Approved.Root, "examples", "lantern-tide-gb"));

        Assert.True(run.ExitCode == 0, run.Error);
        Assert.NotEmpty(Directory.EnumerateFiles(Path.Combine(folder.Path, "out", "cart")));
        Tool.Succeed("sha256sum", Path.Combine(folder.Path, "out", "cart"), "--check", "--strict", "../SHA256SUMS");
        Assert.DoesNotContain("error", Levels(folder));
    }

    [Fact]
    public void A_cart_with_a_fault_fails_the_step_and_shows_the_line()
    {
        using var folder = new TempFolder();
        File.WriteAllText(Path.Combine(folder.Path, "cart.json"), """
            {
              "cart": { "name": "lantern-tide", "platform": "gb", "title": "LANTERN TIDE" },
              "progams": [ { "file": "main.bin" } ]
            }
            """);

        var run = Run(folder, folder.Path);

        Assert.Equal(2, run.ExitCode);
        Assert.False(Directory.Exists(Path.Combine(folder.Path, "out", "cart")));
        Assert.Contains("error", Levels(folder));
        var lines = Results(folder).SelectMany(static result => result.GetProperty("locations").EnumerateArray())
            .Select(static location => location.GetProperty("physicalLocation"))
            .Where(static place => place.TryGetProperty("region", out _))
            .Select(static place => place.GetProperty("region").GetProperty("startLine").GetInt32());
        Assert.Contains(3, lines);
    }

    private static ToolResult Run(TempFolder folder, string cart) =>
        Tool.Run("env", folder.Path, $"CARTWRIGHT=dotnet {typeof(CartwrightCommand).Assembly.Location}", "sh", Script, cart, Path.Combine(folder.Path, "out"));

    private static IEnumerable<string> Levels(TempFolder folder) => Results(folder).Select(static result => result.GetProperty("level").GetString()!);

    private static JsonElement[] Results(TempFolder folder)
    {
        var sarif = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder.Path, "out", "findings.sarif"))).RootElement;
        Assert.Equal("2.1.0", sarif.GetProperty("version").GetString());
        return [.. sarif.GetProperty("runs").EnumerateArray().SelectMany(static run => run.GetProperty("results").EnumerateArray())];
    }
}
