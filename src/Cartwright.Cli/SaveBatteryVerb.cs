using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Cartwright.Findings;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save battery</c></summary>
internal static class SaveBatteryVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var capacity = new Option<string>("--capacity") { Description = "The cell's capacity, with its unit: 225mAh.", HelpName = "charge", Required = true };
        var current = new Option<string>("--current") { Description = "What memory and supervisor typically draw while the console is off: 0.1uA.", HelpName = "current", Required = true };
        var maximum = new Option<string?>("--max-current") { Description = "What they draw at most, by the data sheet: 3uA.", HelpName = "current" };
        var discharge = new Option<string>("--self-discharge") { Description = "What the cell loses by itself, in percent of its capacity a year.", HelpName = "percent", DefaultValueFactory = static _ => "1%" };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "battery",
            "Reckons how many years a cell feeds a save memory.",
            "cartwright save battery --capacity 225mAh --current 0.1uA --max-current 3uA",
            "cartwright save battery --capacity 225mAh --current 1uA --self-discharge 2%")
        {
            capacity, current, maximum, discharge, json,
        };
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            var charge = Read(ElectricalQuantity.Charge, "--capacity", parsed.GetRequiredValue(capacity), log);
            var typical = Read(ElectricalQuantity.Current, "--current", parsed.GetRequiredValue(current), log);
            var most = parsed.GetValue(maximum) is { } text ? Read(ElectricalQuantity.Current, "--max-current", text, log) : null;
            var percent = ReadPercent(parsed.GetRequiredValue(discharge), log);
            if (log.HasErrors)
            {
                ImageInput.WriteFindings(errors, log.ToSorted());
                return ExitCode.Refused;
            }

            var estimate = new BatteryEstimate(charge!.Value, percent!.Value, typical!.Value, most);
            estimate.Check(log);
            Report(estimate, parsed.GetValue(json), output, errors, log);
            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    private static decimal? Read(ElectricalQuantity quantity, string option, string text, FindingLog log)
    {
        var value = quantity.Parse(text);
        if (value is null)
        {
            log.Add(BatteryFindings.BadQuantity, new SourcePlace(option), $"`{text}` is no {quantity.Name}.", quantity.Expected);
        }

        return value;
    }

    private static decimal? ReadPercent(string text, FindingLog log)
    {
        var value = BatteryLife.ParsePercent(text);
        if (value is null)
        {
            log.Add(BatteryFindings.BadQuantity, new SourcePlace("--self-discharge"), $"`{text}` is no share of the capacity.", "percent a year, from 0% to 100%: 1%", "Write the number and a percent sign.");
        }

        return value;
    }

    private static void Report(BatteryEstimate estimate, bool json, TextWriter output, TextWriter errors, FindingLog log)
    {
        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, estimate, log));
            return;
        }

        ImageInput.WriteFindings(errors, log.ToSorted());
        if (!log.HasErrors)
        {
            WriteText(output, estimate);
        }
    }

    private static void WriteText(TextWriter output, BatteryEstimate estimate)
    {
        output.WriteLine(Text($"A cell of {estimate.AmpereHours * 1000:0.######} mAh that loses {estimate.SelfDischargePercent:0.######} % a year by itself:"));
        Columns.Write(output, "  ",
        [
            ["", "current", "on paper", "with self-discharge"],
            Row("typical", estimate.Typical),
            .. estimate.Maximum is { } maximum ? new[] { Row("maximum", maximum) } : [],
        ]);
        output.WriteLine("Promise the maximum, expect the typical.");
        output.WriteLine();
        output.WriteLine("Before you touch the cell:");
        foreach (var caution in BatteryCautions.All)
        {
            output.WriteLine($"- {caution}");
        }
    }

    private static string[] Row(string name, BatteryLife life) => [name, Text($"{life.Amperes * 1_000_000:0.######} uA"), Years(life.YearsOnPaper), Years(life.Years)];

    private static string Years(decimal years) => Text($"{years:0.0} years");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static void WriteJson(Utf8JsonWriter json, BatteryEstimate estimate, FindingLog log)
    {
        json.WriteNumber("milliampereHours", estimate.AmpereHours * 1000);
        json.WriteNumber("selfDischargePercent", estimate.SelfDischargePercent);
        WriteLife(json, "typical", estimate.Typical);
        if (estimate.Maximum is { } maximum)
        {
            WriteLife(json, "maximum", maximum);
        }

        Json.WriteTexts(json, "cautions", BatteryCautions.All);
        Json.WriteFindings(json, log.ToSorted());
    }

    private static void WriteLife(Utf8JsonWriter json, string name, BatteryLife life)
    {
        json.WriteStartObject(name);
        json.WriteNumber("microamperes", life.Amperes * 1_000_000);
        json.WriteNumber("yearsOnPaper", decimal.Round(life.YearsOnPaper, 2));
        json.WriteNumber("years", decimal.Round(life.Years, 2));
        json.WriteEndObject();
    }
}
