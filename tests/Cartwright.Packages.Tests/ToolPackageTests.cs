using System.IO.Compression;
using System.Reflection.PortableExecutable;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Packages.Tests;

public sealed class ToolPackageTests
{
    [Fact]
    public void The_installed_command_builds_a_cart()
    {
        using var bench = new Bench();
        var manifest = bench.CopyCart("lantern-tide-gb");
        bench.Succeed("tool", "install", "Cartwright.Tool", "--version", Bench.Version, "--tool-path", "tools", "--configfile", "nuget.config");
        var command = Assert.Single(Directory.GetFiles(bench.At("tools"), "cartwright*"));
        Assert.Equal(new ToolResult(0, $"{Bench.Version}\n", ""), bench.Run(command, "--version"));
        Assert.Equal(0, bench.Run(command, "build").ExitCode);
        OwnBuild.Equal(manifest, bench.At("dist"));
    }

    // Source: ECMA-335, II.25.3.3, CLI header: ManagedNativeHeader is zero in an assembly that holds intermediate code alone.
    [Theory]
    [InlineData("linux-x64", "Cartwright.Cli.dll", true)]
    [InlineData("linux-x64", "Cartwright.dll", true)]
    [InlineData("any", "Cartwright.dll", false)]
    public void It_is_compiled_ahead_where_the_runtime_is_known(string runtime, string assembly, bool ahead)
    {
        using var package = ZipFile.OpenRead(Path.Combine(Bench.Feed, $"Cartwright.Tool.{runtime}.{Bench.Version}.nupkg"));
        using var bytes = new MemoryStream();
        using (var entry = package.GetEntry($"tools/net10.0/{runtime}/{assembly}")!.Open())
        {
            entry.CopyTo(bytes);
        }

        bytes.Position = 0;
        using var reader = new PEReader(bytes);
        Assert.Equal(ahead, reader.PEHeaders.CorHeader!.ManagedNativeHeaderDirectory.Size > 0);
    }
}
