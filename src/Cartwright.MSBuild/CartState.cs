using System.Text;
using Cartwright.Images;

namespace Cartwright.MSBuild;

/// <summary>What is kept of a cart from one build to the next, among the project's intermediate files.</summary>
internal sealed class CartState(string folder, string manifest)
{
    private readonly string _name = $"{Path.GetFileNameWithoutExtension(manifest)}-{FileDigest.Of(Encoding.UTF8.GetBytes(manifest)).Crc32Text}";

    /// <summary>Says how the cart is to be built; written when that changes.</summary>
    public string Request => InFolder("request");

    /// <summary>Lists the files the last build read.</summary>
    public string Read => InFolder("read");

    /// <summary>Lists the files the last good build made; written after all of them.</summary>
    public string Stamp => InFolder("made");

    /// <summary>The lines of one of the lists; none when it is not there.</summary>
    public static string[] Lines(string list) => File.Exists(list) ? File.ReadAllLines(list) : [];

    /// <summary>Writes a file anew unless it holds these lines.</summary>
    public static void WriteIfOther(string path, IReadOnlyCollection<string> lines)
    {
        if (!File.Exists(path) || !File.ReadAllLines(path).SequenceEqual(lines, StringComparer.Ordinal))
        {
            Write(path, lines);
        }
    }

    /// <summary>Writes a file.</summary>
    public static void Write(string path, IEnumerable<string> lines)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllLines(path, lines);
    }

    private string InFolder(string kind) => Path.Combine(folder, $"{_name}.{kind}");
}
