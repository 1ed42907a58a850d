using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>The programs that lie in the repository are what their sources assemble to.</summary>
public sealed class RebuildTests
{
    // What a rebuild script answers when its assembler is not installed.
    private const int AssemblerMissing = 3;

    public static TheoryData<string> Names => Example.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void The_sources_assemble_to_the_same_bytes(string name)
    {
        using var folder = new TempFolder();
        using var example = Example.Build(name);
        var result = Tool.Run("sh", folder.Path, Path.Combine(example.Source, "rebuild.sh"), folder.Path);
        Assert.SkipWhen(result.ExitCode == AssemblerMissing, result.Error.Trim());
        Assert.True(result.ExitCode == 0, result.Error);
        Assert.Empty(Snapshot.Of(folder.Path).Differences(Snapshot.Of(Path.Combine(example.Source, "out")), new Redaction(folder.Path)));
    }
}
