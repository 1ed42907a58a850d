using System.Text;
using Cartwright.Platforms;
using Cartwright.Tests.Oracles;

namespace Cartwright.Tests.Builds;

/// <summary>A folder with a manifest and some programs, built whole. The programs are blank where headers lie, so that nothing clashes.</summary>
internal sealed class BuildBench : IDisposable
{
    private readonly TempFolder _folder = new();

    public BuildBench(string manifest)
    {
        _folder.Write("cart.json", Encoding.UTF8.GetBytes(manifest));
        Program("main.bin", 32 << 10);
        Program("large.bin", 64 << 10);
        Program("chr.bin", 8 << 10);
        _folder.Write("swapped.bin", [(byte)'A', (byte)'S', .. new byte[0x7FFE]]);
        _folder.Write("other.bin", [.. Enumerable.Repeat((byte)0x11, 0x40)]);
    }

    public string Folder => _folder.Path;

    public string Output => Path.Combine(Folder, "dist");

    /// <summary>A manifest for the Game Boy, with one program at its start.</summary>
    public static string Manifest(string members, string programs = """{ "file": "main.bin", "offset": "0" }""", string platform = "gb") =>
        $$"""{ "cart": { "name": "lantern-tide", "platform": "{{platform}}" }, "programs": [ {{programs}} ], {{members}} }""";

    public CartBuild Build(PlatformCatalog platforms, string? output = null) =>
        new CartBuilder(platforms).Build(new BuildRequest(Path.Combine(Folder, "cart.json")) { OutputFolder = output });

    public CartBuild Build() => Build(PlatformCatalog.BuiltIn);

    public void Dispose() => _folder.Dispose();

    public void Program(string name, int length) => _folder.Write(name, new byte[length]);
}
