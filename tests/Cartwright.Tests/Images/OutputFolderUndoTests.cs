using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>A build that is stopped while its files move into place leaves what was there before, and nothing else.</summary>
public sealed class OutputFolderUndoTests
{
    private static readonly SourcePlace Place = new("cart.json");

    [Fact]
    public void A_file_that_cannot_move_into_place_takes_the_others_back_with_it()
    {
        using var temp = new TempFolder();
        temp.Write("b.bin", "old"u8);
        using (var folder = Open(temp, out var log))
        {
            folder.Stage(File("a.bin"));
            folder.Stage(File("b.bin"));
            folder.Stage(File("c.bin"));
            Directory.CreateDirectory(Path.Combine(temp.Path, "c.bin"));
            Assert.ThrowsAny<IOException>(folder.Commit);
            Assert.Equal(0, log.Count);
        }

        Assert.Equal("old"u8, temp.Read("b.bin"));
        Assert.Equal(["b.bin", "c.bin"], Names(temp));
    }

    [Fact]
    public void The_next_build_undoes_what_a_killed_one_moved()
    {
        using var temp = new TempFolder();
        temp.Write("a.bin", "new, and there was none before"u8);
        temp.Write("b.bin", "new"u8);
        var stage = Path.Combine(temp.Path, ".cartwright-stage");
        foreach (var name in new[] { "new", "old", "fresh" })
        {
            Directory.CreateDirectory(Path.Combine(stage, name));
        }

        temp.Write(".cartwright-stage/fresh/a.bin", []);
        temp.Write(".cartwright-stage/old/b.bin", "old"u8);
        temp.Write(".cartwright-stage/new/c.bin", "new"u8);
        using (Open(temp, out var log))
        {
            Assert.Same(OutputFindings.Recovered, Assert.Single(log.ToSorted()).Rule);
        }

        Assert.Equal("old"u8, temp.Read("b.bin"));
        Assert.Equal(["b.bin"], Names(temp));
    }

    private static OutputFolder Open(TempFolder temp, out FindingLog log)
    {
        log = new FindingLog();
        return OutputFolder.Open(temp.Path, Place, log)!;
    }

    private static OutputFile File(string name) => new(name, OutputKind.Rom, ImageFormat.Raw, ["new"u8.ToArray()]);

    private static IEnumerable<string?> Names(TempFolder temp) =>
        Directory.EnumerateFileSystemEntries(temp.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal);
}
