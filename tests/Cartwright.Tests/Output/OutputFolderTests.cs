using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Output;

/// <summary>The stage at every point where a build can be stopped.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private const string Stage = ".cartwright-stage";
    private static readonly string[] Names = ["a.bin", "b.bin", "c.bin", "d.bin"];

    private readonly TempFolder _folder = new();
    private readonly FindingLog _log = new();

    public void Dispose() => _folder.Dispose();

    // a and c replace earlier files, b and d are new; `moved` files have left the stage, and of the next one perhaps only the earlier file has gone.
    [Theory]
    [InlineData(0, false)]
    [InlineData(0, true)]
    [InlineData(1, false)]
    [InlineData(2, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(4, false)]
    public void A_build_stopped_at_any_move_is_undone_by_the_next(int moved, bool halfOfNext)
    {
        Write("other.txt", "mine");
        Write($"{Stage}/fresh", "b.bin\nd.bin\n");
        Directory.CreateDirectory(In($"{Stage}/old"));
        Directory.CreateDirectory(In($"{Stage}/new"));
        for (var i = 0; i < Names.Length; i++)
        {
            var (name, replaces) = (Names[i], i % 2 == 0);
            Write(i < moved ? name : $"{Stage}/new/{name}", "new");
            if (replaces) Write(i < moved || (i == moved && halfOfNext) ? $"{Stage}/old/{name}" : name, "old");
        }

        Open()!.Dispose();
        Assert.Equal(["CW6006"], _log.ToSorted().Select(finding => finding.Code));
        Assert.Equal(["a.bin old", "c.bin old", "other.txt mine"], Files());
        Assert.False(Directory.Exists(In(Stage)));
    }

    [Fact]
    public void Earlier_files_are_put_back_even_without_a_list_of_new_ones()
    {
        Write("a.bin", "new");
        Write($"{Stage}/old/a.bin", "old");
        Open()!.Dispose();
        Assert.Equal(["a.bin old"], Files());
        Assert.Equal(["CW6006"], _log.ToSorted().Select(finding => finding.Code));
    }

    [Fact]
    public void A_build_stopped_while_it_cleared_up_is_a_build_that_was_done()
    {
        Write("a.bin", "new");
        Write($"{Stage}/done/a.bin", "old");
        Write($"{Stage}/fresh", "b.bin\n");
        Write("b.bin", "new");
        Open()!.Dispose();
        Assert.Equal(["a.bin new", "b.bin new"], Files());
        Assert.Equal(0, _log.Count);
    }

    [Fact]
    public void A_build_stopped_before_it_moved_anything_leaves_nothing()
    {
        Write("a.bin", "old");
        Write($"{Stage}/new/a.bin", "half");
        Write($"{Stage}/lock", "");
        using (var folder = Open()!)
        {
            folder.Stage(File("a.bin", "new"));
            folder.Commit();
        }

        Assert.Equal(["a.bin new"], Files());
        Assert.Equal(0, _log.Count);
    }

    [Fact]
    public void A_list_of_new_files_reaches_no_file_outside()
    {
        using var outside = new TempFolder();
        outside.Write("mine.txt", "mine"u8);
        Write($"{Stage}/fresh", $"{outside.Path}/mine.txt\n../mine.txt\n");
        Write($"{Stage}/old/a.bin", "old");
        Open()!.Dispose();
        Assert.Equal("mine"u8.ToArray(), outside.Read("mine.txt"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("/old")]
    public void A_stage_that_is_a_link_is_refused(string part)
    {
        using var outside = new TempFolder();
        outside.Write("mine.txt", "mine"u8);
        Directory.CreateDirectory(In(part.Length > 0 ? Stage : "."));
        Directory.CreateSymbolicLink(In(Stage + part), outside.Path);
        using var folder = Open();
        Assert.Null(folder);
        Assert.Equal(["CW6001"], _log.ToSorted().Select(finding => finding.Code));
        Assert.Equal(["mine.txt"], Directory.GetFiles(outside.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void A_file_that_cannot_be_moved_puts_everything_back()
    {
        Write("a.bin", "old");
        Directory.CreateDirectory(In("c.bin"));
        using (var folder = Open()!)
        {
            foreach (var name in Names) folder.Stage(File(name, "new"));
            Assert.ThrowsAny<IOException>(folder.Commit);
        }

        Assert.Equal(["a.bin old"], Files());
        Assert.True(Directory.Exists(In("c.bin")));
        Assert.False(Directory.Exists(In(Stage)));
    }

    [Fact]
    public void A_link_in_place_of_a_file_is_replaced_and_not_written_through()
    {
        using var outside = new TempFolder();
        outside.Write("mine.txt", "mine"u8);
        System.IO.File.CreateSymbolicLink(In("a.bin"), Path.Combine(outside.Path, "mine.txt"));
        using (var folder = Open()!)
        {
            folder.Stage(File("a.bin", "new"));
            folder.Commit();
        }

        Assert.Equal("mine"u8.ToArray(), outside.Read("mine.txt"));
        Assert.Equal(["a.bin new"], Files());
        Assert.Null(new FileInfo(In("a.bin")).LinkTarget);
    }

    [Fact]
    public void Only_one_build_at_a_time_has_the_folder()
    {
        using (var first = Open())
        {
            using var second = Open();
            Assert.NotNull(first);
            Assert.Null(second);
            Assert.Equal(["CW6003"], _log.ToSorted().Select(finding => finding.Code));
        }

        using var next = Open();
        Assert.NotNull(next);
    }

    // flock(1) of util-linux sees the same lock as another process would.
    [Fact]
    public void Another_process_sees_the_lock()
    {
        using var folder = Open();
        Assert.NotNull(folder);
        Assert.NotEqual(0, Tool.Run("flock", _folder.Path, "-n", In($"{Stage}/lock"), "true").ExitCode);
        Write("lock", "");
        Assert.Equal(0, Tool.Run("flock", _folder.Path, "-n", In("lock"), "true").ExitCode);
    }

    [Fact]
    public void A_folder_made_for_nothing_is_removed()
    {
        OutputFolder.Open(In("dist"), SourcePlace.None, _log)!.Dispose();
        Assert.False(Directory.Exists(In("dist")));
    }

    private OutputFolder? Open() => OutputFolder.Open(_folder.Path, SourcePlace.None, _log);

    private static OutputFile File(string name, string text) => new(name, OutputKind.Chip, ImageFormat.Raw, [System.Text.Encoding.ASCII.GetBytes(text)]);

    private string In(string name) => Path.Combine(_folder.Path, name);

    private void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(name))!);
        System.IO.File.WriteAllText(In(name), text);
    }

    private IEnumerable<string> Files() =>
        Directory.GetFiles(_folder.Path).Order(StringComparer.Ordinal).Select(file => $"{Path.GetFileName(file)} {System.IO.File.ReadAllText(file)}");
}
