using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Images;

/// <summary>Puts several files into a folder, all of them or none.</summary>
public static class OutputFiles
{
    /// <summary>Writes the files; what goes wrong is a finding, and then the folder is as it was.</summary>
    /// <param name="folder">The folder; made when it is not there.</param>
    /// <param name="files">The files.</param>
    /// <param name="place">Where findings about the folder point.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static void Write(string folder, ImmutableArray<OutputFile> files, SourcePlace place, FindingLog log)
    {
        using var target = OutputFolder.Open(folder, place, log);
        if (target is null || FolderInTheWay(folder, files, place, log))
        {
            return;
        }

        try
        {
            foreach (var file in files)
            {
                target.Stage(file);
            }

            target.Commit();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            log.Add(OutputFindings.WriteFailed, place, $"The files could not be written into {folder}: {fault.Message}");
        }
    }

    private static bool FolderInTheWay(string folder, ImmutableArray<OutputFile> files, SourcePlace place, FindingLog log)
    {
        var before = log.Count;
        foreach (var path in files.Select(file => Path.Combine(folder, file.Name)).Where(Directory.Exists))
        {
            log.Add(OutputFindings.NotWritable, place, $"There is a folder where a file of the build goes: {path}.", remedy: "Move the folder away, or choose another output folder.");
        }

        return log.Count > before;
    }
}
