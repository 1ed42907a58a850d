using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Cartwright.Findings;

namespace Cartwright.Cli;

/// <summary>Prints results as JSON.</summary>
internal static class Json
{
    /// <summary>Prints one object.</summary>
    public static void Write(TextWriter output, Action<Utf8JsonWriter> content)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            json.WriteStartObject();
            content(json);
            json.WriteEndObject();
        }

        output.WriteLine(Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length));
    }

    /// <summary>Writes findings as the member <c>findings</c>.</summary>
    public static void WriteFindings(Utf8JsonWriter json, ImmutableArray<Finding> findings)
    {
        json.WriteStartArray("findings");
        foreach (var finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("severity", FindingText.Word(finding.Severity));
            json.WriteString("message", finding.Message);
            json.WriteString("expected", finding.Expected);
            json.WriteString("advice", finding.Advice);
            WritePlace(json, finding.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePlace(Utf8JsonWriter json, SourcePlace place)
    {
        json.WriteString("file", place.File);
        if (place.Line > 0)
        {
            json.WriteNumber("line", place.Line);
            json.WriteNumber("column", place.Column);
        }

        if (place.Key is { } key)
        {
            json.WriteString("key", key);
        }

        if (place.Offset is { } offset)
        {
            json.WriteNumber("offset", offset);
        }
    }

    /// <summary>The name of a member for words that are shown to people: <c>data lines</c> gives <c>dataLines</c>.</summary>
    public static string Name(string words) =>
        JsonNamingPolicy.CamelCase.ConvertName(CultureInfo.InvariantCulture.TextInfo.ToTitleCase(words).Replace(" ", "", StringComparison.Ordinal));

    /// <summary>Writes a list of texts.</summary>
    public static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
