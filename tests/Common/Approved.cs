using System.Text;
using Xunit;

namespace Cartwright.Tests;

/// <summary>Holds generated files that are kept in the repository equal to what the code generates.</summary>
/// <remarks>Set the environment variable <c>CARTWRIGHT_UPDATE=1</c> and run the tests to write the files anew; then review the difference.</remarks>
internal static class Approved
{
    private const string UpdateVariable = "CARTWRIGHT_UPDATE";
    private const string RootMark = "Cartwright.slnx";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The folder that holds the whole repository.</summary>
    public static string Root { get; } = RepositoryRoot();

    /// <summary>True when approved files are to be written anew.</summary>
    public static bool Updates => Environment.GetEnvironmentVariable(UpdateVariable) == "1";

    /// <summary>Fails unless the file holds exactly this text; writes it instead when asked to update. A file that is not there holds nothing.</summary>
    /// <param name="repositoryRelativePath">The file, from the repository root, with forward slashes.</param>
    /// <param name="actual">What the code generates.</param>
    public static void Equal(string repositoryRelativePath, string actual)
    {
        var path = Path.Combine(Root, repositoryRelativePath);
        if (Updates)
        {
            Write(path, actual);
            return;
        }

        var approved = File.Exists(path) ? File.ReadAllText(path, Utf8) : "";
        if (FirstDifference(approved, actual) is { } difference)
            Assert.Fail($"{repositoryRelativePath} is out of date: {difference}\nRun the tests with {UpdateVariable}=1 to write it anew.");
    }

    private static void Write(string path, string text)
    {
        if (text.Length == 0)
        {
            File.Delete(path);
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text, Utf8);
    }

    /// <summary>The first line that differs, with both versions of it; null when the texts are equal.</summary>
    internal static string? FirstDifference(string approved, string actual)
    {
        if (string.Equals(approved, actual, StringComparison.Ordinal))
            return null;
        var (left, right) = (approved.Split('\n'), actual.Split('\n'));
        var line = 0;
        while (line < left.Length && line < right.Length && string.Equals(left[line], right[line], StringComparison.Ordinal))
            line++;
        return $"line {line + 1}\n  in the file: {Shown(left, line)}\n  generated:   {Shown(right, line)}";
    }

    private static string Shown(string[] lines, int line) =>
        line < lines.Length ? $"\"{lines[line].Replace("\r", "\\r", StringComparison.Ordinal)}\"" : "(no such line)";

    /// <summary>The folder that holds the whole repository.</summary>
    internal static string RepositoryRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, RootMark)))
                return folder.FullName;
        }

        throw new InvalidOperationException($"no folder above {AppContext.BaseDirectory} holds {RootMark}");
    }
}
