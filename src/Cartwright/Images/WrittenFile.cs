namespace Cartwright.Images;

/// <summary>An output file and what identifies it.</summary>
/// <param name="File">The file.</param>
/// <param name="Digest">Its size and digests.</param>
public sealed record WrittenFile(OutputFile File, FileDigest Digest)
{
    /// <summary>Whether a folder holds just this file already.</summary>
    /// <param name="folder">The folder.</param>
    public bool IsIn(string folder)
    {
        var path = Path.Combine(folder, File.Name);
        try
        {
            using var held = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
            using var same = new ComparingStream(held);
            if (held.Length == Digest.Size)
            {
                File.WriteTo(same);
            }

            return held.Length == Digest.Size && same.IsSame;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
