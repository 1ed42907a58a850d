using Cartwright.Findings;

namespace Cartwright.Images;

/// <summary>A folder that takes all files of a build or none: they are staged beside their target and moved into place together.</summary>
public sealed class OutputFolder : IDisposable
{
    private const string LockName = "lock";
    private const int Attempts = 10;

    private readonly string _folder;
    private readonly bool _madeFolder;
    private readonly FileStream _lock;
    private readonly OutputStage _stage;

    private OutputFolder(string folder, bool madeFolder)
    {
        _folder = folder;
        _madeFolder = madeFolder;
        _lock = new FileStream(LockIn(folder), FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, bufferSize: 1, FileOptions.DeleteOnClose);
        _stage = new OutputStage(folder);
    }

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
            return Lock(folder, made, place, log)?.Ready(place, log);
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
    public void Stage(OutputFile file) => _stage.Add(file);

    /// <summary>Moves every staged file into place; on any fault puts the earlier files back.</summary>
    /// <exception cref="IOException">A file could not be moved; the earlier output is as it was.</exception>
    public void Commit() => _stage.Commit();

    /// <summary>Removes the stage, and the folder too when this build made it and put nothing there. What cannot be removed, the next build removes.</summary>
    public void Dispose()
    {
        try
        {
            _stage.Clear();
            // The lock goes last and takes its file with it: from then on the stage may be another build's.
            _lock.Dispose();
            Directory.Delete(OutputStage.In(_folder));
            if (_madeFolder && !Directory.EnumerateFileSystemEntries(_folder).Any())
            {
                Directory.Delete(_folder);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _lock.Dispose();
        }
    }

    private static string LockIn(string folder) => Path.Combine(OutputStage.In(folder), LockName);

    private static OutputFolder? Lock(string folder, bool made, SourcePlace place, FindingLog log)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                if (Directory.CreateDirectory(OutputStage.In(folder)).LinkTarget is { } target)
                {
                    log.Add(OutputFindings.NotWritable, place, $"The output folder {folder} cannot be used: the stage in it is a link to {target}.", remedy: "Remove the link.");
                    return null;
                }

                return new OutputFolder(folder, made);
            }
            catch (IOException fault) when (File.Exists(LockIn(folder)))
            {
                log.Add(OutputFindings.Busy, place, $"Another build is writing into {folder}: {fault.Message}");
                return null;
            }
            catch (IOException) when (attempt < Attempts)
            {
                // Another build has just let go: its lock, and perhaps its stage, went while we reached for them.
            }
        }
    }

    private OutputFolder? Ready(SourcePlace place, FindingLog log)
    {
        try
        {
            if (_stage.Recover())
            {
                log.Add(OutputFindings.Recovered, place, $"A build into {_folder} was stopped half-way; the earlier files are back in place.");
            }

            return this;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            log.Add(OutputFindings.NotWritable, place, $"The output folder {_folder} cannot be made ready: {fault.Message}");
            Dispose();
            return null;
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
