using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Images;

namespace Cartwright.Cli;

/// <summary>The files a build leaves for other tools: findings for a build service, dependencies for make. They are written over each time.</summary>
/// <param name="sarif">Where the findings go; null for nowhere.</param>
/// <param name="dependencies">Where the dependencies go; null for nowhere.</param>
internal sealed class BuildLogs(string? sarif, string? dependencies)
{
    /// <summary>Writes them; what goes wrong is among the findings that are returned.</summary>
    public ImmutableArray<Finding> Write(CartBuild build, CartOutputResult? result, ImmutableArray<Finding> findings)
    {
        var log = new FindingLog();
        if (dependencies is not null && result is not null)
        {
            Write(dependencies, Dependencies(build, result), log);
        }

        if (sarif is not null)
        {
            Write(sarif, SarifWriter.Write(findings.AddRange(log.ToSorted()), LibraryVersion.Text, UriOf), log);
        }

        return findings.AddRange(log.ToSorted());
    }

    private static void Write(string file, byte[] bytes, FindingLog log)
    {
        var path = Path.GetFullPath(file);
        OutputFiles.Write(Path.GetDirectoryName(path)!, [NewFile.Of(path, bytes)], new SourcePlace(file), log);
    }

    private static byte[] Dependencies(CartBuild build, CartOutputResult result)
    {
        var manifest = build.Manifest!;
        var home = Path.GetDirectoryName(Path.GetFullPath(manifest.File))!;
        return DependencyFile.Write(
            [.. result.Files.Select(file => Here(Path.Combine(build.OutputFolder, file.File.Name)))],
            [.. manifest.Programs.Select(static entry => entry.File.Text).Distinct(StringComparer.Ordinal).Prepend(Path.GetFileName(manifest.File)).Select(input => Here(Path.Combine(home, input)))]);
    }

    // As a makefile in the current folder names it.
    private static string Here(string path) => Path.GetRelativePath(Environment.CurrentDirectory, path);

    private static string? UriOf(string file)
    {
        if (!File.Exists(file))
        {
            return null;
        }

        var here = Here(Path.GetFullPath(file));
        return here.StartsWith("..", StringComparison.Ordinal)
            ? new Uri(Path.GetFullPath(file)).AbsoluteUri
            : string.Join('/', here.Split(Path.DirectorySeparatorChar).Select(Uri.EscapeDataString));
    }
}
