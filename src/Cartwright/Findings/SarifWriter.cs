using System.Collections.Immutable;
using System.Text.Json;

namespace Cartwright.Findings;

/// <summary>Writes findings as a log in the Static Analysis Results Interchange Format, which build services show beside the lines they are about.</summary>
/// <remarks>Source: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, sections 3.13 to 3.30.</remarks>
public static class SarifWriter
{
    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    /// <summary>Writes one run.</summary>
    /// <param name="findings">The findings, in the order they are told.</param>
    /// <param name="version">The version of the tool.</param>
    /// <param name="uriOf">The URI of a finding's file; null where it is none, such as a setting on the command line.</param>
    /// <returns>UTF-8 JSON with a line end at its end.</returns>
    public static byte[] Write(ImmutableArray<Finding> findings, string version, Func<string, string?> uriOf)
    {
        ImmutableArray<FindingRule> rules = [.. findings.Select(static finding => finding.Rule).Distinct().OrderBy(static rule => rule.Code, StringComparer.Ordinal)];
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", Schema);
            json.WriteString("version", "2.1.0");
            json.WriteStartArray("runs");
            json.WriteStartObject();
            WriteTool(json, rules, version);
            json.WriteStartArray("results");
            foreach (var finding in findings)
            {
                WriteResult(json, finding, rules.IndexOf(finding.Rule), uriOf);
            }

            json.WriteEndArray();
            json.WriteString("columnKind", "utf16CodeUnits");
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void WriteTool(Utf8JsonWriter json, ImmutableArray<FindingRule> rules, string version)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "cartwright");
        json.WriteString("version", version);
        json.WriteStartArray("rules");
        foreach (var rule in rules)
        {
            json.WriteStartObject();
            json.WriteString("id", rule.Code);
            WriteText(json, "shortDescription", rule.Title + ".");
            WriteText(json, "fullDescription", rule.Why);
            WriteText(json, "help", rule.Remedy);
            json.WriteStartObject("defaultConfiguration");
            json.WriteString("level", FindingText.Word(rule.Severity));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteResult(Utf8JsonWriter json, Finding finding, int rule, Func<string, string?> uriOf)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", finding.Code);
        json.WriteNumber("ruleIndex", rule);
        json.WriteString("level", FindingText.Word(finding.Severity));
        WriteText(json, "message", FindingText.Words(finding));
        if (finding.Place.File is { } file && uriOf(file) is { } uri)
        {
            WriteLocation(json, finding.Place, uri);
        }

        json.WriteEndObject();
    }

    private static void WriteLocation(Utf8JsonWriter json, SourcePlace place, string uri)
    {
        json.WriteStartArray("locations");
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", uri);
        json.WriteEndObject();
        if (place.Line > 0 || place.Offset is not null)
        {
            WriteRegion(json, place);
        }

        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteRegion(Utf8JsonWriter json, SourcePlace place)
    {
        json.WriteStartObject("region");
        if (place.Line > 0)
        {
            json.WriteNumber("startLine", place.Line);
            json.WriteNumber("startColumn", Math.Max(1, place.Column));
        }
        else
        {
            json.WriteNumber("byteOffset", place.Offset!.Value);
        }

        json.WriteEndObject();
    }

    private static void WriteText(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", text);
        json.WriteEndObject();
    }
}
