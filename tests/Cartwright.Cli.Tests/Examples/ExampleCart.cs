using System.Text.Json;
using Cartwright.Cli.Tests.Cases;
using Cartwright.Tests;
using Xunit;

namespace Cartwright.Cli.Tests.Examples;

/// <summary>One of the carts in <c>examples/</c>.</summary>
internal static class ExampleCart
{
    public static TheoryData<string> Names =>
        [.. Directory.EnumerateFiles(Path.Combine(Approved.Root, "examples"), "cart.json", SearchOption.AllDirectories).Select(static file => Path.GetFileName(Path.GetDirectoryName(file)!)).Order(StringComparer.Ordinal)];

    public static string Folder(string name) => Path.Combine(Approved.Root, "examples", name);

    /// <summary>Builds the cart without a finding, and gives what <c>--json</c> says of each file.</summary>
    public static IReadOnlyDictionary<string, JsonElement> Build(string name, string output, params string[] settings)
    {
        var result = CommandRun.Here(["build", Folder(name), "--out", output, "--json", .. settings.SelectMany(static setting => new[] { "--set", setting })]);
        Assert.Equal((0, ""), (result.ExitCode, result.Errors));
        using var json = JsonDocument.Parse(result.Output);
        Assert.Empty(json.RootElement.GetProperty("findings").EnumerateArray());
        return json.RootElement.GetProperty("files").EnumerateArray().ToDictionary(static file => file.GetProperty("file").GetString()!, static file => file.Clone());
    }

    /// <summary>The ROM file of a built cart.</summary>
    public static string Rom(string folder) =>
        Assert.Single(Directory.EnumerateFiles(folder), static file => Path.GetExtension(file) is ".gb" or ".md" or ".nes" or ".sfc");
}
