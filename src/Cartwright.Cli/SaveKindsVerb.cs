using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save kinds</c></summary>
internal static class SaveKindsVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var name = new Argument<string?>("platform") { Description = "Only the kinds of this platform, each in full.", Arity = ArgumentArity.ZeroOrOne };
        var json = Verb.JsonOption();
        var verb = new Verb("kinds", "Lists the kinds of save memory: sizes, the order of their bytes on the chip, for the console and in files.", "cartwright save kinds", "cartwright save kinds md") { name, json };
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(name), errors, out var platform))
            {
                return ExitCode.Refused;
            }

            Report(platform, parsed.GetValue(json), output);
            return ExitCode.Done;
        });
        return verb;
    }

    private static void Report(Platform? platform, bool json, TextWriter output)
    {
        var kinds = platform is null ? SaveKinds.All : SaveKinds.Of(platform.Facts.Id);
        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, kinds));
        }
        else if (platform is null)
        {
            Columns.Write(output, "", [.. kinds.Select(static kind => new[] { string.Join(", ", kind.Platforms), kind.Id, Sizes(kind), SaveWords.Of(kind.Memory), SaveWords.Of(kind.Lanes), string.Join(", ", kind.Layouts) })]);
        }
        else if (kinds.IsEmpty)
        {
            output.WriteLine($"{platform.Facts.Name}: no save memory is known on its cartridges.");
        }
        else
        {
            WriteInFull(kinds, output);
        }
    }

    private static void WriteInFull(ImmutableArray<SaveKind> kinds, TextWriter output)
    {
        foreach (var kind in kinds)
        {
            output.WriteLine(kind.Id);
            Columns.Write(output, "  ", [.. Rows(kind).Select(static row => new[] { row.Name, row.Text })]);
        }
    }

    private static ImmutableArray<(string Name, string Text)> Rows(SaveKind kind) =>
    [
        ("memory", SaveWords.Of(kind.Memory)),
        ("bus", SaveWords.Of(kind.Lanes)),
        ("sizes", Sizes(kind)),
        ("on the chip", kind.OnChip),
        ("for the console", kind.OnConsole),
        ("in files", kind.InFiles),
        ("layouts", string.Join(", ", kind.Layouts)),
        ("clock", kind.HasClock ? "44 or 48 bytes behind the memory" : "none"),
        ("source", kind.Source + (kind.FromMemory && !kind.Source.Contains("from memory", StringComparison.Ordinal) ? "; in part from memory" : "")),
    ];

    private static string Sizes(SaveKind kind) => string.Join(", ", kind.Sizes.Select(static size => ByteSize.Words(size)));

    private static void WriteJson(Utf8JsonWriter json, ImmutableArray<SaveKind> kinds)
    {
        json.WriteStartArray("kinds");
        foreach (var kind in kinds)
        {
            json.WriteStartObject();
            Json.WriteTexts(json, "platforms", kind.Platforms);
            json.WriteString("id", kind.Id);
            foreach (var (name, text) in Rows(kind))
            {
                json.WriteString(Json.Name(name), text);
            }

            json.WriteStartArray("bytes");
            foreach (var size in kind.Sizes)
            {
                json.WriteNumberValue(size);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
