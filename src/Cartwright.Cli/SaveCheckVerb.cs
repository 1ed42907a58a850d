using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save check</c></summary>
internal static class SaveCheckVerb
{
    private static readonly Dictionary<SavePartState, string> States = new()
    {
        [SavePartState.Whole] = "whole",
        [SavePartState.New] = "new",
        [SavePartState.NoSignature] = "no signature",
        [SavePartState.UnknownVersion] = "later version",
        [SavePartState.HalfWritten] = "half written",
        [SavePartState.Outside] = "outside the save",
    };

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The save, in the order the game sees it." };
        var manifest = new Option<string>("--manifest") { Description = "The game's manifest, or its folder.", HelpName = "file", DefaultValueFactory = static _ => "cart.json" };
        var set = ManifestInput.SetOption();
        var json = Verb.JsonOption();
        var verb = new Verb(
            "check",
            "Checks a save against the structure that its game's manifest describes.",
            "cartwright save check read-1.sav --manifest cart.json")
        {
            file, manifest, set, json,
        };
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            var (path, name) = (ManifestInput.Path(parsed.GetRequiredValue(manifest)), parsed.GetRequiredValue(file));
            var settings = ImageInput.Read(path, log) is { } text ? ManifestReader.Read(path, text, ManifestInput.Overrides(parsed.GetValue(set) ?? []), log)?.Save : null;
            var bytes = ImageInput.Read(name, log);
            if (bytes is not null)
            {
                _ = SaveFileChecks.IsUsable(name, bytes, log);
            }

            if (log.HasErrors || settings is null || bytes is null)
            {
                ImageInput.WriteFindings(errors, log.ToSorted());
                return ExitCode.Refused;
            }

            var parts = new SaveStructure(settings).Check(bytes, new SourcePlace(name), log);
            Report(parts, parsed.GetValue(json), output, errors, log);
            return parts.IsEmpty ? ExitCode.Refused : log.HasErrors ? ExitCode.Found : ExitCode.Done;
        });
        return verb;
    }

    private static void Report(ImmutableArray<SavePart> parts, bool json, TextWriter output, TextWriter errors, FindingLog log)
    {
        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, parts, log));
            return;
        }

        ImageInput.WriteFindings(errors, log.ToSorted());
        Columns.Write(output, "",
        [
            .. parts.Select(static part => new[]
            {
                part.Name, Number.Hex(part.Offset, 6), ByteSize.Words(part.Size), States[part.State],
                part.Version is { } version ? FormattableString.Invariant($"version {version}") : "",
                part.Sequence is { } sequence ? FormattableString.Invariant($"written as number {sequence}") : "",
            }),
        ]);
        if (SaveStructure.Newest(parts) is { } newest)
        {
            output.WriteLine($"The newest whole slot is {newest.Name}.");
        }
    }

    private static void WriteJson(Utf8JsonWriter json, ImmutableArray<SavePart> parts, FindingLog log)
    {
        json.WriteStartArray("parts");
        foreach (var part in parts)
        {
            json.WriteStartObject();
            json.WriteString("name", part.Name);
            json.WriteNumber("offset", part.Offset);
            json.WriteNumber("size", part.Size);
            json.WriteString("state", States[part.State]);
            if (part.Version is { } version)
            {
                json.WriteNumber("version", version);
            }

            if (part.Sequence is { } sequence)
            {
                json.WriteNumber("sequence", sequence);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("newest", SaveStructure.Newest(parts)?.Name);
        Json.WriteFindings(json, log.ToSorted());
    }
}
