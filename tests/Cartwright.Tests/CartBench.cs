using System.Text;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Tests.Oracles;
using Cartwright.Tests.Platforms;
using Xunit;

namespace Cartwright.Tests;

/// <summary>A cart folder of its own for one test: manifest, programs, and whole builds of them.</summary>
internal sealed class CartBench : IDisposable
{
    private readonly TempFolder _folder = new();

    public CartBench(string members = "", string programs = """{ "file": "main.bin", "offset": "0x80" }""", string cart = "")
    {
        Manifest($$"""{ "cart": { "name": "lantern-tide", "platform": "bench", "title": "LANTERN TIDE"{{cart}} }, "programs": [ {{programs}} ]{{(members.Length > 0 ? ", " + members : "")}} }""");
        Write("main.bin", TestBytes.L(0x180));
    }

    /// <summary>Full path of the folder.</summary>
    public string Path => _folder.Path;

    /// <summary>The manifest's full path.</summary>
    public string ManifestPath => In("cart.json");

    /// <summary>The platforms builds may choose from.</summary>
    public PlatformCatalog Platforms { get; init; } = new([new TestPlatform(), new TwoRegionPlatform()]);

    public string In(string name) => System.IO.Path.Combine(Path, name);

    public void Write(string name, ReadOnlySpan<byte> bytes)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(In(name))!);
        _folder.Write(name, bytes);
    }

    public void Manifest(string text) => Write("cart.json", Encoding.UTF8.GetBytes(text));

    public CartBuild Build(ManifestOverrides? overrides = null, string? output = null) =>
        new CartBuilder(Platforms).Build(new BuildRequest(ManifestPath) { Overrides = overrides ?? ManifestOverrides.None, OutputFolder = output });

    /// <summary>Builds, writes, and gives every code that was told.</summary>
    public string[] Run(ManifestOverrides? overrides = null, string? output = null)
    {
        var build = Build(overrides, output);
        var told = build.HasErrors ? build.Findings : build.Findings.AddRange(CartOutput.Write(build).Findings);
        return [.. told.Select(finding => finding.Code)];
    }

    /// <summary>Builds and writes, and fails the test when there is an error.</summary>
    public CartOutputResult Succeed(ManifestOverrides? overrides = null, string? output = null)
    {
        var build = Build(overrides, output);
        Assert.Empty(build.Findings.Where(finding => finding.Severity == FindingSeverity.Error).Select(FindingText.Line));
        var result = CartOutput.Write(build);
        Assert.Empty(result.Findings.Where(finding => finding.Severity == FindingSeverity.Error).Select(FindingText.Line));
        return result;
    }

    /// <summary>Every file below a folder by name, with its bytes as digits.</summary>
    public SortedDictionary<string, string> Tree(string folder = "dist") => new(
        Directory.Exists(In(folder))
            ? Directory.EnumerateFiles(In(folder), "*", SearchOption.AllDirectories).ToDictionary(file => System.IO.Path.GetRelativePath(In(folder), file), file => Convert.ToHexString(File.ReadAllBytes(file)))
            : [],
        StringComparer.Ordinal);

    public void Dispose() => _folder.Dispose();
}
