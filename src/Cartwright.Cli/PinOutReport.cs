using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Cartwright.Chips;

namespace Cartwright.Cli;

/// <summary>Shows the pin-outs of a part.</summary>
internal static class PinOutReport
{
    /// <summary>Draws each as its package lies on the bench: pin 1 at the upper left, the numbers running round.</summary>
    public static void WriteText(TextWriter output, ImmutableArray<PinOut> pinOuts)
    {
        foreach (var pinOut in pinOuts)
        {
            output.WriteLine();
            output.WriteLine($"Pin-out {pinOut.Name}, {PartWords.PinOutStatuses.Print(pinOut.Status)}: {pinOut.Source}");
            if (pinOut.Caution is { } caution)
            {
                output.WriteLine($"  Caution: {caution}.");
            }

            WritePins(output, pinOut);
        }
    }

    private static void WritePins(TextWriter output, PinOut pinOut)
    {
        var half = pinOut.PinCount / 2;
        var widest = pinOut.Signals.Take(half).Max(static signal => signal.Length);
        for (var pin = 1; pin <= half; pin++)
        {
            var other = pinOut.PinCount + 1 - pin;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {pinOut.SignalAt(pin).PadLeft(widest)}  {pin,2} | {other,2}  {pinOut.SignalAt(other)}"));
        }

        foreach (var (pin, note) in pinOut.Notes)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  pin {pin}, {pinOut.SignalAt(pin)}: {note}"));
        }
    }

    public static void WriteJson(Utf8JsonWriter json, ImmutableArray<PinOut> pinOuts)
    {
        json.WriteStartArray("pinOuts");
        foreach (var pinOut in pinOuts)
        {
            json.WriteStartObject();
            json.WriteString("name", pinOut.Name);
            json.WriteString("package", pinOut.Package);
            json.WriteString("status", PartWords.PinOutStatuses.Print(pinOut.Status));
            json.WriteString("source", pinOut.Source);
            json.WriteString("caution", pinOut.Caution);
            json.WriteStartArray("pins");
            for (var pin = 1; pin <= pinOut.PinCount; pin++)
            {
                json.WriteStartObject();
                json.WriteNumber("pin", pin);
                json.WriteString("signal", pinOut.SignalAt(pin));
                if (pinOut.Notes.TryGetValue(pin, out var note))
                {
                    json.WriteString("note", note);
                }

                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
