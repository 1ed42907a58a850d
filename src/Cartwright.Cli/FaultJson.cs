using System.Text.Json;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright.Cli;

/// <summary>Prints a fault as JSON: its kind, its lines by the chip's names, its parameters, the chip, and its pins.</summary>
internal static class FaultJson
{
    public static void Write(Utf8JsonWriter json, ProofSubject subject, Fault fault)
    {
        json.WriteStartObject();
        json.WriteString("kind", fault.Kind.Name);
        if (!fault.Lines.IsEmpty)
        {
            Json.WriteTexts(json, "lines", fault.Lines.Select(line => subject.Lines.Of(line).Chip));
        }

        foreach (var parameter in fault.Parameters)
        {
            json.WritePropertyName(parameter.Name);
            json.WriteRawValue(parameter.Json);
        }

        json.WriteString("site", subject.Site);
        if (!fault.Lines.IsEmpty && subject.Lines.Of(fault.Lines[0]).Bus is not null)
        {
            Json.WriteTexts(json, "busLines", fault.Lines.Select(line => subject.Lines.Of(line).Bus ?? "none"));
        }

        WritePins(json, subject, fault);
        json.WriteString("means", FaultWords.Sentence(subject, fault));
        json.WriteString("look", fault.Kind.Look);
        json.WriteEndObject();
    }

    private static void WritePins(Utf8JsonWriter json, ProofSubject subject, Fault fault)
    {
        json.WriteStartArray("pins");
        foreach (var pin in fault.Lines.SelectMany(line => subject.PinsOf(line)))
        {
            json.WriteStartObject();
            json.WriteString("line", pin.Line);
            json.WriteString("package", pin.PinOut.Package);
            json.WriteNumber("pin", pin.Pin);
            json.WriteString("signal", pin.Signal);
            json.WriteStartArray("neighbours");
            foreach (var other in pin.Neighbours)
            {
                json.WriteStartObject();
                json.WriteNumber("pin", other);
                json.WriteString("signal", pin.PinOut.SignalAt(other));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("pinOut", pin.PinOut.Name);
            json.WriteString("caution", pin.PinOut.Caution);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
