using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using Cartwright.Chips;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright parts</c></summary>
internal static class PartsVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var words = new Argument<string[]>("words") { Description = "A part to show in full, or words to search for: a size (512KiB, 512KiB+), a supply (5V, 3.3V), an access time (90ns), a package (DIP32), a maker.", Arity = ArgumentArity.ZeroOrMore };
        var json = Verb.JsonOption();
        var verb = new Verb("parts", "Lists the parts of the catalogue, or shows one.", "cartwright parts SST39SF040", "cartwright parts 512KiB 5V DIP", "cartwright parts 1MiB+ 16-bit 3.3V 90ns")
        {
            words, json, PartsFitVerb.Create(output, errors), PartsDecodeVerb.Create(output, errors), PartsIdentifyVerb.Create(output, errors),
        };
        verb.SetAction(parsed => Run(parsed.GetValue(words) ?? [], parsed.GetValue(json), output, errors));
        return verb;
    }

    private static int Run(string[] words, bool json, TextWriter output, TextWriter errors)
    {
        var catalog = PartCatalog.BuiltIn;
        var all = string.Join(' ', words);
        var exact = words.Length > 0 ? catalog.Find(all) : null;
        var found = exact is not null ? [exact] : catalog.Search(all);
        if (found.IsEmpty)
        {
            var nearest = catalog.Nearest(all);
            errors.WriteLine(NotFound.Line("part", all, nearest.IsEmpty ? null : $"Did you mean {string.Join(" or ", nearest)}?", "parts"));
            return ExitCode.Refused;
        }

        if (json)
        {
            Json.Write(output, writer => WriteJson(writer, found, withPinOuts: exact is not null));
        }
        else if (exact is not null)
        {
            WritePart(output, exact);
            PinOutReport.WriteText(output, PinOutCatalog.BuiltIn.Of(exact));
        }
        else
        {
            Columns.Write(output, "", [.. found.Select(static part => new[]
            {
                part.Name, ByteSize.Words(part.CapacityBytes), PartWords.DataBuses.Print(part.DataBus), PartWords.Kinds.Print(part.Kind),
                part.Supply.Text + " V", part.Packages, PartWords.Statuses.Print(part.Evidence.Status),
            })]);
        }

        return ExitCode.Done;
    }

    private static void WritePart(TextWriter output, Part part) =>
        Columns.Write(output, "",
        [
            .. Rows(part).Where(static row => row.Text.Length > 0).Select(static row => new[] { row.Name, row.Text }),
        ]);

    private static ImmutableArray<(string Name, string Text)> Rows(Part part) =>
    [
        ("part", part.Name),
        ("also written", string.Join(", ", part.Aliases)),
        ("makers", part.Makers),
        ("kind", PartWords.Kinds.Print(part.Kind)),
        ("capacity", ByteSize.Describe(part.CapacityBytes)),
        ("data lines", PartWords.DataBuses.Print(part.DataBus)),
        ("packages", part.Packages),
        ("supply", part.Supply.Text + " V"),
        ("5 V inputs", $"{PartWords.Tolerances.Print(part.Supply.FiveVoltTolerantInputs)} ({part.Supply.FiveVoltSource})"),
        ("programming voltage", part.Programming.ProgrammingVoltage.Length == 0 ? "" : part.Programming.ProgrammingVoltage + " V"),
        ("sectors", part.Sectors.Layout),
        ("written by", part.Programming.Granularity),
        ("access", part.AccessText.Length == 0 ? "" : part.AccessText.Replace(";", ", ", StringComparison.Ordinal) + " ns"),
        ("identity", part.Identity.ManufacturerId.Length == 0 ? "" : $"maker {part.Identity.ManufacturerId}, device {part.Identity.DeviceId}"),
        ("endurance", part.Endurance.Text.Length == 0 ? "" : part.Endurance.Text + " cycles"),
        ("notes", part.Notes),
        ("status", PartWords.Statuses.Print(part.Evidence.Status)),
        ("seen in the source", part.Evidence.VerifiedFields),
        ("source", part.Evidence.Source),
        ("found at", part.Evidence.SourceAddress),
    ];

    private static void WriteJson(Utf8JsonWriter json, ImmutableArray<Part> parts, bool withPinOuts)
    {
        json.WriteStartArray("parts");
        foreach (var part in parts)
        {
            json.WriteStartObject();
            foreach (var (name, text) in Rows(part))
            {
                json.WriteString(Json.Name(name), text);
            }

            json.WriteNumber("capacityBytes", part.CapacityBytes);
            if (withPinOuts)
            {
                PinOutReport.WriteJson(json, PinOutCatalog.BuiltIn.Of(part));
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
