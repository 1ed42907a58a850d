using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>The committed programs of the examples are what their sources assemble to.</summary>
public sealed class ExampleRebuildTests
{
    [Theory]
    [InlineData("lantern-tide-nes", "ca65")]
    [InlineData("lantern-tide-snes", "ca65")]
    [InlineData("lantern-tide-gb", "sdasgb")]
    [InlineData("lantern-tide-md", "m68k-linux-gnu-as")]
    public void The_sources_give_the_committed_programs(string name, string assembler)
    {
        Tool.Require(assembler);
        using var temp = new TempFolder();
        Tool.Succeed("sh", ExampleCart.Folder(name), "./rebuild.sh", temp.Path);
        var committed = Snapshot.Of(Path.Combine(ExampleCart.Folder(name), "out"));
        Assert.NotEmpty(committed.ChangedSince(Snapshot.Of(Path.Combine(ExampleCart.Folder(name), "src"))));
        Assert.Empty(Snapshot.Of(temp.Path).Differences(committed, new Redaction(temp.Path)));
    }
}
