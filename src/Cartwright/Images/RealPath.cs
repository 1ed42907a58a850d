namespace Cartwright.Images;

/// <summary>Where a path leads once every link on the way is followed.</summary>
internal static class RealPath
{
    /// <summary>The path with its links resolved as far as it exists; what does not exist yet stays as it is written.</summary>
    /// <param name="path">Any path.</param>
    public static string Of(string path)
    {
        var full = Path.GetFullPath(path);
        if (Path.GetDirectoryName(full) is not { } parent)
        {
            return full;
        }

        var here = Path.Combine(Of(parent), Path.GetFileName(full));
        return Target(here) ?? here;
    }

    private static string? Target(string path)
    {
        try
        {
            return new FileInfo(path).ResolveLinkTarget(returnFinalTarget: true)?.FullName is { } target ? Of(target) : null;
        }
        catch (IOException)
        {
            // A circle of links leads nowhere.
            return null;
        }
    }
}
