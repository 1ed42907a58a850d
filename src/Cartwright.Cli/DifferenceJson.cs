using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Proofs;

namespace Cartwright.Cli;

/// <summary>Prints where read-backs differ as JSON.</summary>
internal static class DifferenceJson
{
    public static void Write(Utf8JsonWriter json, ProofResult proof)
    {
        var (map, subject) = (proof.Differences, proof.Subject);
        json.WriteStartObject("differences");
        json.WriteNumber("words", map.WordCount);
        json.WriteNumber("wrongWords", map.WrongWords);
        json.WriteNumber("maskedBytes", proof.MaskedBytes);
        if (map.First >= 0)
        {
            json.WriteNumber("firstOffset", (long)map.First * subject.Shape.Bytes);
            json.WriteNumber("expectedWord", map.FirstExpected);
            json.WriteNumber("readWord", map.FirstRead);
        }

        WriteRows(json, subject.BankSize > 0 ? "banks" : "sixteenths", map.Banks);
        WriteRows(json, "sectors", map.Sectors);
        json.WriteStartArray("dataLines");
        foreach (var line in map.DataLines.Where(static line => line.ReadHigh + line.ReadLow > 0))
        {
            json.WriteStartObject();
            json.WriteString("line", subject.Lines.Of(string.Create(CultureInfo.InvariantCulture, $"D{line.Line}")).Chip);
            json.WriteNumber("readHigh", line.ReadHigh);
            json.WriteNumber("readLow", line.ReadLow);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteRows(Utf8JsonWriter json, string name, ImmutableArray<DifferenceRow> rows)
    {
        json.WriteStartArray(name);
        foreach (var row in rows.Where(static row => row.WrongWords > 0))
        {
            json.WriteStartObject();
            json.WriteNumber("number", row.Number);
            json.WriteNumber("offset", row.Offset);
            json.WriteNumber("length", row.Length);
            json.WriteNumber("wrongWords", row.WrongWords);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
