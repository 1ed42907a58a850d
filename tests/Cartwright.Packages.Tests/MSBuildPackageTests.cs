using System.Text.RegularExpressions;
using Xunit;

namespace Cartwright.Packages.Tests;

public sealed partial class MSBuildPackageTests
{
    private static readonly string Project = $"""
        <Project Sdk="Microsoft.NET.Sdk">
          <PropertyGroup><TargetFramework>net10.0</TargetFramework></PropertyGroup>
          <ItemGroup>
            <PackageReference Include="Cartwright.MSBuild" Version="{Bench.Version}" PrivateAssets="all" />
            <CartManifest Include="cart.json" />
            <CartManifest Include="second/cart.json" OutputFolder="low-voltage" Settings="board:chips:U1:part=SST39VF040" />
            <CartManifest Include="second/cart.json" OutputFolder="release" Settings="cart:revision=2;cart:name=second" />
          </ItemGroup>
        </Project>
        """;

    [Fact]
    public void The_carts_of_a_project_are_built_with_it_and_only_when_something_changed()
    {
        using var bench = new Bench();
        var manifest = bench.CopyCart("lantern-tide-snes");
        bench.CopyCart("lantern-tide-gb", "second");
        bench.Write("game.csproj", Project);

        var output = bench.Succeed("build");
        Assert.Equal(["lantern-tide-gb", "lantern-tide-snes", "second"], Built(output));
        Assert.Contains($"{bench.At("second", "cart.json")} : warning CW5503: U1: SST39VF040 ", output, StringComparison.Ordinal);
        OwnBuild.Equal(manifest, bench.At("dist"));
        Assert.Contains("\"revision\": \"2\"", File.ReadAllText(bench.At("release", "second.record.json")), StringComparison.Ordinal);

        var first = Times(bench);
        var quiet = bench.Succeed("build", "--no-restore", "-v:n");
        Assert.Empty(Built(quiet));
        Assert.Contains("Skipping target \"BuildCarts\"", quiet, StringComparison.Ordinal);
        Assert.Equal(first, Times(bench));

        var program = bench.At("out", "tides.bin");
        File.WriteAllBytes(program, [.. File.ReadAllBytes(program).Select(static value => (byte)~value)]);
        File.Delete(bench.At("release", "second.gb"));
        Assert.Equal(["lantern-tide-snes", "second"], Built(bench.Succeed("build", "--no-restore")));
        OwnBuild.Equal(manifest, bench.At("dist"));
        Assert.True(File.Exists(bench.At("release", "second.gb")));

        // The misspelt key stands at the start of the line after the first brace.
        File.WriteAllText(manifest, File.ReadAllText(manifest).Insert(1, "\n\"progams\": [],"));
        var failed = bench.DotNet("build", "--no-restore");
        Assert.Equal(1, failed.ExitCode);
        Assert.Matches($@"{Regex.Escape(manifest)}\(2,1\): error CW\d{{4}}: .*progams", failed.Output);

        bench.Succeed("clean");
        Assert.Empty(new[] { "dist", "low-voltage", "release" }.SelectMany(folder => Directory.EnumerateFiles(bench.At(folder))));
        Assert.True(File.Exists(program));
    }

    private static IEnumerable<string> Built(string output) => BuiltLine().Matches(output).Select(static match => match.Groups[1].Value).Order(StringComparer.Ordinal);

    private static List<(string, DateTime)> Times(Bench bench) =>
        [.. new[] { "dist", "release", "obj" }.SelectMany(folder => Directory.EnumerateFiles(bench.At(folder), folder == "obj" ? "*.made" : "*", SearchOption.AllDirectories)).Select(static file => (file, File.GetLastWriteTimeUtc(file)))];

    [GeneratedRegex(@"^\s*([\w-]+) -> \S*/(?:dist|low-voltage|release)\r?$", RegexOptions.Multiline)]
    private static partial Regex BuiltLine();
}
