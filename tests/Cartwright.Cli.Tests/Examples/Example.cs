using System.Text.Json;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>An example cart, built into a folder of its own.</summary>
internal sealed class Example : IDisposable
{
    private readonly TempFolder _folder = new();

    private Example(string name)
    {
        Name = name;
        var result = CommandRun.Here("build", Path.Combine(Source, "cart.json"), "--out", Output);
        Assert.True(result.ExitCode == 0, result.Errors);
        Record = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Output, RecordName))).RootElement;
    }

    /// <summary>The folders of `examples` that hold a cart.</summary>
    public static TheoryData<string> Names =>
    [
        .. Directory.EnumerateDirectories(Path.Combine(Approved.Root, "examples"))
            .Where(static folder => File.Exists(Path.Combine(folder, "cart.json")))
            .Select(static folder => Path.GetFileName(folder))
            .Order(StringComparer.Ordinal),
    ];

    public string Name { get; }

    public string Source => Path.Combine(Approved.Root, "examples", Name);

    public string Output => Path.Combine(_folder.Path, "out");

    public string RecordName => Name + ".record.json";

    public JsonElement Record { get; }

    public IEnumerable<JsonElement> Files => Record.GetProperty("files").EnumerateArray();

    public string RomFile => Files.Single(static file => Text(file, "kind") == "rom").GetProperty("file").GetString()!;

    public IEnumerable<JsonElement> Chips => Record.GetProperty("chips").EnumerateArray();

    public static Example Build(string name) => new(name);

    public static string Text(JsonElement element, string member) => element.GetProperty(member).GetString()!;

    public byte[] Read(string file) => File.ReadAllBytes(Path.Combine(Output, file));

    public void Dispose() => _folder.Dispose();
}
