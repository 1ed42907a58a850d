using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests.Oracles;

namespace Cartwright.Cli.Tests.Mutations;

/// <summary>A cart that builds, from the golden cases, to be spoilt.</summary>
/// <param name="Manifest">Its manifest.</param>
/// <param name="Programs">Its program files.</param>
internal sealed record SoundCart(string Manifest, IReadOnlyDictionary<string, byte[]> Programs)
{
    public static IReadOnlyList<SoundCart> All { get; } =
        [.. new[] { "build/gb", "build/inline-board", "build/md", "build/md-inline-board", "build/nes", "build/snes", "build/two-programs" }.Select(Of)];

    private static SoundCart Of(string name)
    {
        using var temp = new TempFolder();
        new CaseFolder(name).CopyTo(temp);
        var files = Directory.EnumerateFiles(temp.Path).ToDictionary(static file => Path.GetFileName(file), File.ReadAllBytes);
        return new SoundCart(
            string.Join('\n', File.ReadAllLines(Path.Combine(temp.Path, "cart.json")).Where(static line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal))),
            files.Where(static file => file.Key != "cart.json").ToDictionary());
    }
}
