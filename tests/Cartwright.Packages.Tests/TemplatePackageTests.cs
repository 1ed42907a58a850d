using Cartwright.Tests;
using Xunit;

namespace Cartwright.Packages.Tests;

public sealed class TemplatePackageTests
{
    [Fact]
    public void A_cart_from_a_template_is_the_one_the_command_makes_and_builds_with_the_project()
    {
        using var bench = new Bench();
        // A hive of its own: what the machine has installed is neither used nor changed.
        string[] own = ["--debug:custom-hive", bench.At("hive")];
        bench.Succeed(["new", "install", $"Cartwright.Templates@{Bench.Version}", "--nuget-source", Bench.Feed, .. own]);
        bench.Write("Directory.Build.props", "<Project />");
        var command = Path.Combine(Approved.Root, "src", "Cartwright.Cli", "bin", Bench.Configuration, "net10.0", "Cartwright.Cli.dll");
        foreach (var (family, platform) in new[] { ("atari", "a8bit"), ("classic", "msx"), ("nintendo", "snes") })
        {
            bench.Succeed(["new", $"cart-{family}", "--platform", platform, "--name", platform, .. own]);
            bench.Succeed(command, "new", platform, Path.Combine("own", platform));
            Assert.Equal(Contents(bench.At("own", platform)), Contents(bench.At(platform)));
        }

        bench.Succeed("build", "msx");
        OwnBuild.Equal(bench.At("msx", "cart.json"), bench.At("msx", "dist"));
    }

    [Fact]
    public void The_project_in_it_asks_for_this_version() =>
        Assert.Contains($"Version=\"{Bench.Version}\"", File.ReadAllText(Path.Combine(Approved.Root, "templates", "every", "my-game.csproj")), StringComparison.Ordinal);

    private static SortedDictionary<string, string> Contents(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(path => Path.GetRelativePath(folder, path), static path => Convert.ToHexString(File.ReadAllBytes(path))),
        StringComparer.Ordinal);
}
