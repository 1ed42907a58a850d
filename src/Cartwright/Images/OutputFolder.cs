using Cartwright.Findings;

namespace Cartwright.Images;

/// <summary>A folder that takes all files of a build or none: they are staged beside their target and moved into place together.</summary>
public sealed class OutputFolder : IDisposable
{
    private const string StageName = ".cartwright-stage";
    private const string LockName = "lock";
    private const string NewName = "new";
    private const string OldName = "old";
    private const string FreshName = "fresh";

    private readonly string _folder;
    private readonly string _stage;
    private readonly bool _madeFolder;
    private readonly FileStream _lock;
    private readonly List<string> _names = [];

    private OutputFolder(string folder, bool madeFolder, FileStream @lock)
    {
        _folder = folder;
        _stage = Path.Combine(folder, StageName);
        _madeFolder = madeFolder;
        _lock = @lock;
    }

    private string New => Path.Combine(_stage, NewName);

    private string Old => Path.Combine(_stage, OldName);

    // An empty file of each name that had no earlier file: what to take away when the build is undone.
    private string Fresh => Path.Combine(_stage, FreshName);

    /// <summary>Opens a folder for writing; makes it when it is not there. Puts back what a killed build left half moved.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="place">Where findings about it point.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when the folder cannot be used.</returns>
    public static OutputFolder? Open(string folder, SourcePlace place, FindingLog log)
    {
        if (FileInTheWay(folder) is { } file)
        {
            log.Add(OutputFindings.NotWritable, place, $"There is a file where the output folder goes: {file}.", remedy: "Move the file away, or choose another folder.");
            return null;
        }

        try
        {
            var made = !Directory.Exists(folder);
            var stage = Directory.CreateDirectory(Path.Combine(folder, StageName));
            var output = new OutputFolder(folder, made, new FileStream(Path.Combine(stage.FullName, LockName), FileMode.OpenOrCreate, FileAccess.Write, FileShare.None));
            output.Recover(place, log);
            Directory.CreateDirectory(output.New);
            return output;
        }
        catch (IOException fault) when (File.Exists(Path.Combine(folder, StageName, LockName)) && !Directory.Exists(Path.Combine(folder, LockName)))
        {
            log.Add(OutputFindings.Busy, place, $"Another build is writing into {folder}: {fault.Message}");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            log.Add(OutputFindings.NotWritable, place, $"The output folder {folder} cannot be written to: {fault.Message}");
        }

        return null;
    }

    /// <summary>Stages one file.</summary>
    /// <param name="file">The file.</param>
    /// <exception cref="IOException">The disk failed or is full.</exception>
    public void Stage(OutputFile file)
    {
        using var stream = new FileStream(Path.Combine(New, file.Name), FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        file.WriteTo(stream);
        _names.Add(file.Name);
    }

    /// <summary>Moves every staged file into place; on any fault puts the earlier files back.</summary>
    /// <exception cref="IOException">A file could not be moved; the earlier output is as it was.</exception>
    public void Commit()
    {
        Directory.CreateDirectory(Fresh);
        Directory.CreateDirectory(Old);
        try
        {
            foreach (var name in _names)
            {
                if (File.Exists(Path.Combine(_folder, name)))
                {
                    File.Move(Path.Combine(_folder, name), Path.Combine(Old, name));
                }
                else
                {
                    File.Create(Path.Combine(Fresh, name)).Dispose();
                }

                File.Move(Path.Combine(New, name), Path.Combine(_folder, name));
            }
        }
        catch
        {
            PutBack();
            throw;
        }

        // Once the old files are gone the build is done; a killed clean-up leaves nothing to put back.
        Directory.Delete(Old, recursive: true);
    }

    /// <summary>Removes the stage, and the folder too when this build made it and put nothing there.</summary>
    public void Dispose()
    {
        _lock.Dispose();
        Directory.Delete(_stage, recursive: true);
        if (_madeFolder && !Directory.EnumerateFileSystemEntries(_folder).Any())
        {
            Directory.Delete(_folder);
        }
    }

    private void Recover(SourcePlace place, FindingLog log)
    {
        if (Directory.Exists(Old))
        {
            PutBack();
            log.Add(OutputFindings.Recovered, place, $"A build into {_folder} was stopped half-way; the earlier files are back in place.");
        }

        if (Directory.Exists(New))
        {
            Directory.Delete(New, recursive: true);
        }
    }

    private void PutBack()
    {
        foreach (var file in Directory.Exists(Fresh) ? Directory.EnumerateFiles(Fresh) : [])
        {
            File.Delete(Path.Combine(_folder, Path.GetFileName(file)));
        }

        foreach (var file in Directory.EnumerateFiles(Old))
        {
            File.Move(file, Path.Combine(_folder, Path.GetFileName(file)), overwrite: true);
        }

        Directory.Delete(Old);
        if (Directory.Exists(Fresh))
        {
            Directory.Delete(Fresh, recursive: true);
        }
    }

    private static string? FileInTheWay(string folder)
    {
        for (var path = folder; path is not null && !Directory.Exists(path); path = Path.GetDirectoryName(path))
        {
            if (File.Exists(path))
            {
                return path;
            }
        }

        return null;
    }
}
