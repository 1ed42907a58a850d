using Cartwright.Findings;

namespace Cartwright.Programs;

/// <summary>Fetches program files from the disk. Inputs are only ever read.</summary>
public static class ProgramInput
{
    /// <summary>Largest file that is read, in bytes: far above any cartridge, far below what would exhaust memory.</summary>
    public const long LargestFile = 256L << 20;

    /// <summary>Reads a whole file.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="shownAs">How findings name it.</param>
    /// <param name="place">Where the manifest names it.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when it cannot be read.</returns>
    public static byte[]? Read(string path, string shownAs, SourcePlace place, FindingLog log)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists)
            {
                log.Add(ProgramFindings.Missing, place, Directory.Exists(path) ? $"{shownAs} is a folder, not a file." : $"There is no file {shownAs}.");
                return null;
            }

            if (file.Length > LargestFile)
            {
                log.Add(ProgramFindings.TooLarge, place, $"{shownAs} has {file.Length} bytes.", $"at most {LargestFile} bytes");
                return null;
            }

            using var handle = File.OpenHandle(path, options: FileOptions.SequentialScan);
            var bytes = GC.AllocateUninitializedArray<byte>((int)RandomAccess.GetLength(handle));
            var read = 0;
            while (read < bytes.Length && RandomAccess.Read(handle, bytes.AsSpan(read), read) is > 0 and var more)
            {
                read += more;
            }

            return read == bytes.Length ? bytes : bytes[..read];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            log.Add(ProgramFindings.Unreadable, place, $"{shownAs} cannot be read: {fault.Message}");
            return null;
        }
    }
}
