using System.Text;
using Cartwright.Images;

namespace Cartwright.MSBuild;

/// <summary>What is kept of a cart from one build to the next, among the project's intermediate files.</summary>
/// <param name="folder">The folder for it.</param>
/// <param name="manifest">The manifest, a full path.</param>
/// <param name="how">What tells this cart from another of the same manifest.</param>
internal sealed class CartState(string folder, string manifest, params ReadOnlySpan<string> how)
{
    private readonly string _name = $"{Path.GetFileNameWithoutExtension(manifest)}-{FileDigest.Of(Encoding.UTF8.GetBytes(string.Join('\n', [manifest, .. how]))).Crc32Text}";

    /// <summary>Lists the files the last good build made; written last, so that it is newer than everything it vouches for.</summary>
    public string Stamp => InFolder("made");

    private string Read => InFolder("read");

    private string Request => InFolder("request");

    /// <summary>Everything in a folder, and what it says was made: also of carts that are no longer asked for.</summary>
    public static IEnumerable<string> Everything(string folder) =>
        Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*.made").SelectMany(Lines).Concat(Directory.EnumerateFiles(folder)) : [];

    /// <summary>Every file that the stamp must be newer than.</summary>
    public IEnumerable<string> Watched() => Lines(Read).Concat(Lines(Stamp)).Concat([manifest, Request]);

    /// <summary>Keeps how the cart is to be built; the file changes only when that does.</summary>
    public void Ask(IReadOnlyCollection<string> lines)
    {
        if (!Lines(Request).SequenceEqual(lines, StringComparer.Ordinal))
        {
            Write(Request, lines);
        }
    }

    /// <summary>Keeps what a good build read and made.</summary>
    public void Keep(IEnumerable<string> read, IEnumerable<string> made)
    {
        Write(Read, read);
        Write(Stamp, made);
    }

    private static string[] Lines(string list) => File.Exists(list) ? File.ReadAllLines(list) : [];

    private static void Write(string path, IEnumerable<string> lines)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllLines(path, lines);
    }

    private string InFolder(string kind) => Path.Combine(folder, $"{_name}.{kind}");
}
