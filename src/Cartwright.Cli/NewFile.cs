using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>Results of the verbs for existing images: new files, which never replace one that is there.</summary>
internal static class NewFile
{
    /// <summary>The file the user names, or one beside the image with a word in its name.</summary>
    public static string Beside(string image, string? named, string word) =>
        Path.GetFullPath(named ?? Path.ChangeExtension(image, $".{word}{Path.GetExtension(image)}"));

    /// <summary>Whether nothing stands where a file is to go; a finding when something does.</summary>
    public static bool IsFree(string path, FindingLog log)
    {
        if (File.Exists(path))
        {
            log.Add(InspectionFindings.InTheWay, new SourcePlace(path), $"There is a file {path} already.");
        }

        return !File.Exists(path);
    }

    public static OutputFile Of(string path, ReadOnlyMemory<byte> bytes) => new(Path.GetFileName(path), OutputKind.Rom, ImageFormat.Raw, [bytes]);

    /// <summary>Writes one new file; null when it could not be.</summary>
    public static string? Write(string path, ReadOnlyMemory<byte> bytes, FindingLog log)
    {
        if (!IsFree(path, log))
        {
            return null;
        }

        OutputFiles.Write(Path.GetDirectoryName(path)!, [Of(path, bytes)], new SourcePlace(path), log);
        return log.HasErrors ? null : path;
    }
}
