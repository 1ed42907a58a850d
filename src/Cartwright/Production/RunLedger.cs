using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Production;

/// <summary>The ledger of all units of a cart: which numbers are given, and what each unit is made of. Written as JSON, and as a table for a label printer.</summary>
public static class RunLedger
{
    /// <summary>Version of the ledger's form; it rises when a reader of the old form could go wrong.</summary>
    public const int Form = 1;

    /// <summary>Reads a ledger.</summary>
    /// <param name="file">The file.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>The entries, none where there is no ledger yet; null where it cannot be read.</returns>
    public static ImmutableArray<LedgerEntry>? Read(string file, FindingLog log)
    {
        if (!File.Exists(file))
        {
            return [];
        }

        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(file));
            if (json.RootElement.GetProperty("ledger").GetInt32() == Form)
            {
                return [.. json.RootElement.GetProperty("units").EnumerateArray().Select(ReadEntry)];
            }

            log.Add(RunFindings.BadLedger, new SourcePlace(file), $"The ledger is of another form than {Form}.");
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or IOException or UnauthorizedAccessException)
        {
            log.Add(RunFindings.BadLedger, new SourcePlace(file), $"The ledger cannot be read: {fault.Message}");
        }

        return null;
    }

    /// <summary>Writes a ledger as JSON.</summary>
    /// <param name="entries">The units, in the order they were made.</param>
    public static byte[] WriteJson(ImmutableArray<LedgerEntry> entries)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JsonForm.Options))
        {
            json.WriteStartObject();
            json.WriteNumber("ledger", Form);
            json.WriteStartArray("units");
            foreach (var entry in entries)
            {
                WriteEntry(json, entry);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>Writes a ledger as comma-separated text (RFC 4180).</summary>
    /// <param name="entries">The units, in the order they were made.</param>
    public static byte[] WriteTable(ImmutableArray<LedgerEntry> entries)
    {
        ImmutableArray<string> fields = [.. entries.SelectMany(static entry => entry.Values).Select(static value => value.Key).Distinct(StringComparer.OrdinalIgnoreCase)];
        var text = new StringBuilder();
        AddRow(text, ["unit", .. fields, "label", "boardRevision", "cart", "files", "sha256"]);
        foreach (var entry in entries)
        {
            AddRow(text,
            [
                entry.Serial.ToString(CultureInfo.InvariantCulture),
                .. fields.Select(field => entry.Values.FirstOrDefault(value => string.Equals(value.Key, field, StringComparison.OrdinalIgnoreCase)).Value ?? ""),
                entry.Label, entry.BoardRevision, entry.Cart,
                string.Join(' ', entry.Files.Select(static file => file.Name)), string.Join(' ', entry.Files.Select(static file => file.Sha256)),
            ]);
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void WriteEntry(Utf8JsonWriter json, LedgerEntry entry)
    {
        json.WriteStartObject();
        json.WriteNumber("serial", entry.Serial);
        json.WriteStartObject("values");
        foreach (var (name, value) in entry.Values)
        {
            json.WriteString(name, value);
        }

        json.WriteEndObject();
        json.WriteString("label", entry.Label);
        json.WriteString("boardRevision", entry.BoardRevision);
        json.WriteString("cart", entry.Cart);
        json.WriteStartArray("files");
        foreach (var file in entry.Files)
        {
            json.WriteStartObject();
            json.WriteString("file", file.Name);
            json.WriteString("site", file.Site);
            json.WriteString("offset", Number.Hex(file.Offset, 6));
            json.WriteString("crc32", file.Crc32);
            json.WriteString("sha256", file.Sha256);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static LedgerEntry ReadEntry(JsonElement unit) => new(
        unit.GetProperty("serial").GetInt64(),
        [.. unit.GetProperty("values").EnumerateObject().Select(static value => KeyValuePair.Create(value.Name, value.Value.GetString()!))],
        unit.GetProperty("label").GetString()!,
        unit.GetProperty("boardRevision").GetString()!,
        unit.GetProperty("cart").GetString()!,
        [
            .. unit.GetProperty("files").EnumerateArray().Select(static file => new LedgerFile(
                file.GetProperty("file").GetString()!,
                file.GetProperty("site").GetString(),
                Number.TryParse(file.GetProperty("offset").GetString()!, out long offset) ? offset : throw new FormatException("an offset is no number"),
                file.GetProperty("crc32").GetString()!,
                file.GetProperty("sha256").GetString()!)),
        ]);

    private static void AddRow(StringBuilder text, IEnumerable<string> fields) =>
        text.AppendJoin(',', fields.Select(static field => field.AsSpan().IndexOfAny(",\"\r\n") < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")).Append("\r\n");
}
