using System.Collections.Immutable;
using System.Text.Json;

namespace Cartwright.Cli;

/// <summary>Platforms that share a template, as the template's own description lists them.</summary>
/// <param name="Name">Folder of the template, and the last part of its name in <c>dotnet new</c>.</param>
/// <param name="Platforms">Ids, the usual one first.</param>
internal sealed record TemplateFamily(string Name, ImmutableArray<string> Platforms)
{
    private const string Description = "/.template.config/template.json";

    /// <summary>All families, in order of name.</summary>
    public static ImmutableArray<TemplateFamily> All(ImmutableArray<TemplateFile> files) =>
        [.. files.Where(static file => file.Path.EndsWith(Description, StringComparison.Ordinal)).Select(static file => Read(file.Path[..^Description.Length], file.Bytes))];

    private static TemplateFamily Read(string name, ReadOnlyMemory<byte> description)
    {
        using var json = JsonDocument.Parse(description);
        var question = json.RootElement.GetProperty("symbols").GetProperty("platform");
        return new TemplateFamily(name, [.. question.GetProperty("choices").EnumerateArray().Select(static choice => choice.GetProperty("choice").GetString()!)]);
    }
}
