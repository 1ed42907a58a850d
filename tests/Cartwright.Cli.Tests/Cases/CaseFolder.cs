using System.CommandLine.Parsing;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;

namespace Cartwright.Cli.Tests.Cases;

/// <summary>One golden case on the disk: <c>tests/cases/TOPIC/NAME</c>. Its README says what stands in it.</summary>
internal sealed class CaseFolder(string name)
{
    private const string Folder = "tests/cases";
    private const string Command = "cmd";
    private const string Recipe = "make.txt";

    /// <summary>Every case, as TOPIC/NAME, in order.</summary>
    public static IEnumerable<string> All { get; } =
    [
        .. Directory.EnumerateFiles(Path.Combine(Approved.Root, Folder), Command, SearchOption.AllDirectories)
            .Select(static file => Path.GetRelativePath(Path.Combine(Approved.Root, Folder), Path.GetDirectoryName(file)!).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    private string Home => Path.Combine(Approved.Root, Folder, name);

    /// <summary>The arguments; <c>$CART</c> stands for the cart folder's copy.</summary>
    public IReadOnlyList<string> Arguments(string root) =>
        [.. CommandLineParser.SplitCommandLine(File.ReadAllText(Path.Combine(Home, Command))).Select(word => word.Replace(Redaction.Cart, root, StringComparison.Ordinal))];

    /// <summary>False for a command that does not write over what it has written.</summary>
    public bool RunsAgain => !File.Exists(Path.Combine(Home, "once"));

    /// <summary>The variables of a case that runs as a process of its own, in the cart folder; null for the others.</summary>
    public IReadOnlyDictionary<string, string>? Variables
    {
        get
        {
            var file = Path.Combine(Home, "env");
            return File.Exists(file)
                ? File.ReadAllLines(file).Where(static line => line.Contains('=', StringComparison.Ordinal)).Select(static line => line.Split('=', 2)).ToDictionary(static pair => pair[0], static pair => pair[1])
                : null;
        }
    }

    /// <summary>Fills an empty folder with the cart.</summary>
    public void CopyTo(TempFolder folder)
    {
        var source = Path.Combine(Home, "in");
        if (!Directory.Exists(source))
        {
            return;
        }

        foreach (var file in Directory.EnumerateFiles(source, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(folder.Path, Path.GetRelativePath(source, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        var recipe = Path.Combine(folder.Path, Recipe);
        if (File.Exists(recipe))
        {
            CaseRecipe.Make(folder.Path, File.ReadAllLines(recipe));
            File.Delete(recipe);
        }
    }

    /// <summary>Holds a text of the run against the approved one.</summary>
    public void Approve(string what, string actual) => Approved.Equal($"{Folder}/{name}/{what}", actual);

    /// <summary>The output files that are approved whole, from the cart folder.</summary>
    public IEnumerable<string> WholeOutputs
    {
        get
        {
            var folder = Path.Combine(Home, "out");
            return Directory.Exists(folder)
                ? Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Order(StringComparer.Ordinal)
                : [];
        }
    }
}
