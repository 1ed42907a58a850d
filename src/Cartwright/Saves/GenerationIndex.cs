using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>The index of a folder of kept saves, written as JSON.</summary>
public static class GenerationIndex
{
    /// <summary>Name of the index in the folder.</summary>
    public const string FileName = "saves.json";

    /// <summary>Version of the index's form; it rises when a reader of the old form could go wrong.</summary>
    public const int Form = 1;

    private const string DateForm = "yyyy-MM-dd";

    /// <summary>The words for the agreement of reads.</summary>
    public static ImmutableSortedDictionary<string, ReadAgreement> Agreements { get; } = ManifestWords.Words(
        ("one", ReadAgreement.One), ("equal", ReadAgreement.Equal), ("different", ReadAgreement.Different));

    /// <summary>The word for an agreement of reads.</summary>
    /// <param name="reads">The agreement.</param>
    public static string Word(ReadAgreement reads) => ManifestWords.WordOf(Agreements, reads);

    /// <summary>A day as the index and the command write it: 2026-11-25.</summary>
    /// <param name="date">The day.</param>
    public static string Text(DateOnly date) => date.ToString(DateForm, CultureInfo.InvariantCulture);

    /// <summary>Reads a day.</summary>
    /// <param name="text">Year, month and day: 2026-11-25.</param>
    /// <returns>Null when the text is no day.</returns>
    public static DateOnly? ParseDate(string text) => DateOnly.TryParseExact(text, DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;

    /// <summary>Reads an index.</summary>
    /// <param name="folder">The folder of the kept saves.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>The generations, none where there is no index yet; null where it cannot be read.</returns>
    public static ImmutableArray<SaveGeneration>? Read(string folder, FindingLog log)
    {
        var file = Path.Combine(folder, FileName);
        if (!File.Exists(file))
        {
            return [];
        }

        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(file));
            if (json.RootElement.GetProperty("saves").GetInt32() == Form)
            {
                return [.. json.RootElement.GetProperty("generations").EnumerateArray().Select(ReadGeneration)];
            }

            log.Add(KeepFindings.BadIndex, new SourcePlace(file), $"The index is of another form than {Form}.");
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or IOException or UnauthorizedAccessException)
        {
            log.Add(KeepFindings.BadIndex, new SourcePlace(file), $"The index cannot be read: {fault.Message}");
        }

        return null;
    }

    /// <summary>Writes an index.</summary>
    /// <param name="generations">The generations, in the order they were kept.</param>
    public static byte[] Write(ImmutableArray<SaveGeneration> generations)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            json.WriteStartObject();
            json.WriteNumber("saves", Form);
            json.WriteStartArray("generations");
            foreach (var generation in generations)
            {
                json.WriteStartObject();
                WriteGeneration(json, generation);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>Writes the members of one generation.</summary>
    /// <param name="json">Receives them, inside an object.</param>
    /// <param name="generation">The generation.</param>
    public static void WriteGeneration(Utf8JsonWriter json, SaveGeneration generation)
    {
        json.WriteString("unit", generation.Unit);
        json.WriteNumber("generation", generation.Number);
        json.WriteString("date", Text(generation.Date));
        json.WriteString("dateFrom", generation.IsDateGiven ? "given" : "file");
        json.WriteString("reads", Word(generation.Reads));
        json.WriteStartArray("files");
        foreach (var file in generation.Files)
        {
            json.WriteStartObject();
            json.WriteString("file", file.Name);
            json.WriteNumber("bytes", file.Bytes);
            json.WriteString("sha256", file.Sha256);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static SaveGeneration ReadGeneration(JsonElement generation) => new(
        TextOf(generation, "unit"),
        generation.GetProperty("generation").GetInt32(),
        ParseDate(TextOf(generation, "date")) ?? throw new FormatException("a date is none"),
        TextOf(generation, "dateFrom") == "given",
        Agreements.TryGetValue(TextOf(generation, "reads"), out var reads) ? reads : throw new FormatException("`reads` is neither one, equal nor different"),
        [.. generation.GetProperty("files").EnumerateArray().Select(static file => new KeptFile(NameOf(file), file.GetProperty("bytes").GetInt64(), TextOf(file, "sha256")))]);

    private static string TextOf(JsonElement element, string name) => element.GetProperty(name).GetString() ?? throw new FormatException($"`{name}` is null");

    // Whatever the index holds, it names files of its own folder.
    private static string NameOf(JsonElement file) =>
        TextOf(file, "file") is var name && name.Length > 0 && name == Path.GetFileName(name) ? name : throw new FormatException("a file's name leads out of the folder");
}
