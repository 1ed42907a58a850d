using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Programs;

namespace Cartwright;

/// <summary>Reads existing images and patches from the disk.</summary>
public static class ImageFile
{
    /// <summary>Reads a whole file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="log">Receives why it cannot be read.</param>
    /// <returns>Its bytes; null when it cannot be read.</returns>
    public static byte[]? Read(string file, FindingLog log)
    {
        if (!File.Exists(file))
        {
            log.Add(InspectionFindings.NotThere, new SourcePlace(file), Directory.Exists(file) ? $"{file} is a folder." : $"There is no file {file}.");
            return null;
        }

        return ProgramInput.Read(file, file, new SourcePlace(file), log);
    }
}
