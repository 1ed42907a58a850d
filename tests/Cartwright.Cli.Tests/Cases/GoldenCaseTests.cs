using System.Text;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Cases;

/// <summary>Runs every case below <c>tests/cases</c> and holds all that came of it against what is approved.</summary>
public sealed class GoldenCaseTests
{
    // What a failing build must leave alone.
    private static readonly string[] EarlierOutput = ["dist/lantern-tide.U1.bin", "dist/lantern-tide.record.json"];

    public static TheoryData<string> Names => [.. CaseFolder.All];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_case_gives_what_is_approved(string name)
    {
        var folder = new CaseFolder(name);
        using var temp = new TempFolder();
        folder.CopyTo(temp);
        var before = Snapshot.Of(temp.Path);
        var result = Run(folder, temp);
        var after = Snapshot.Of(temp.Path);
        var changed = after.ChangedSince(before);
        var redaction = new Redaction(temp.Path);
        foreach (var record in changed.Where(static file => file.EndsWith(".record.json", StringComparison.Ordinal)))
        {
            redaction.Know(after[record]);
        }

        folder.Approve("exit", $"{result.ExitCode}\n");
        folder.Approve("stdout", redaction.Text(result.Output));
        folder.Approve("stderr", redaction.Text(result.Errors));
        folder.Approve("changed", after.Differences(before, redaction));
        foreach (var file in folder.WholeOutputs)
        {
            folder.Approve("out/" + file, Encoding.UTF8.GetString(redaction.Bytes(after[file].ToArray())));
        }

        if (folder.RunsAgain)
        {
            RunAgain(folder, temp, changed, result);
        }
    }

    // Over an earlier, larger output a build gives the same files, and one that fails leaves that output alone.
    private static void RunAgain(CaseFolder folder, TempFolder temp, IReadOnlyList<string> changed, CaseResult first)
    {
        var fresh = Snapshot.Of(temp.Path);
        PutStale(temp, changed);
        var stale = Snapshot.Of(temp.Path);
        Assert.Equal(first, Run(folder, temp));
        Assert.Empty(Snapshot.Of(temp.Path).Differences(changed.Count > 0 ? fresh : stale, new Redaction(temp.Path)));
    }

    private static void PutStale(TempFolder temp, IReadOnlyList<string> changed)
    {
        if (File.Exists(Path.Combine(temp.Path, "dist")))
        {
            return;
        }

        foreach (var name in (changed.Count > 0 ? changed : EarlierOutput).Where(name => !Directory.Exists(Path.Combine(temp.Path, name))))
        {
            var path = Path.Combine(temp.Path, name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var length = File.Exists(path) ? new FileInfo(path).Length : 0;
            File.WriteAllBytes(path, [.. Enumerable.Repeat((byte)0x5A, (int)length + 1000)]);
        }
    }

    private static CaseResult Run(CaseFolder folder, TempFolder temp) => folder.Variables is { } variables
        ? CommandRun.InItsOwnProcess(temp.Path, folder.Arguments(temp.Path), variables)
        : CommandRun.Here(folder.Arguments(temp.Path));
}
