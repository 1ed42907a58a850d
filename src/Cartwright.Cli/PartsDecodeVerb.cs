using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright parts decode</c></summary>
internal static class PartsDecodeVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "Raw bytes read from the chip in its query mode, from address 0." };
        var boot = BootOption.Create();
        var json = Verb.JsonOption();
        var verb = new Verb(
            "decode",
            "Reads what a chip answered to a Common Flash Interface query, and describes the part for a manifest.",
            "cartwright parts decode query.bin",
            "cartwright parts decode query.bin --boot top")
        {
            file, boot, json,
        };
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            var name = parsed.GetRequiredValue(file);
            var query = ImageInput.Read(name, log) is { } bytes ? CfiReader.Read(bytes, name, BootOption.End(parsed.GetValue(boot)), log) : null;
            if (parsed.GetValue(json))
            {
                Json.Write(output, writer => WriteJson(writer, query, log.ToSorted()));
            }
            else
            {
                ImageInput.WriteFindings(errors, log.ToSorted());
                WriteText(output, query);
            }

            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    private static void WriteText(TextWriter output, CfiQuery? query)
    {
        if (query is null)
        {
            return;
        }

        Columns.Write(output, "", [.. Rows(query).Select(static row => new[] { row.Name, row.Text })]);
        var members = Members(query);
        if (!members.IsEmpty)
        {
            output.WriteLine();
            output.WriteLine("For `board.chips` of the manifest, with a NAME that the catalogue does not have:");
            output.WriteLine($"  \"U1\": {{ {string.Join(", ", members.Select(static member => $"\"{member.Name}\": \"{member.Text}\""))} }}");
        }

        var alike = Alike(query);
        if (!alike.IsEmpty)
        {
            output.WriteLine();
            output.WriteLine("Parts of the catalogue with this size, these data lines and sectors, and the query");
            Columns.Write(output, "  ", [.. alike.Select(static part => new[] { part.Name, part.Supply.Text + " V", PartWords.Statuses.Print(part.Evidence.Status) })]);
        }
    }

    private static ImmutableArray<(string Name, string Text)> Rows(CfiQuery query) =>
    [
        ("dump", query.Spacing),
        ("capacity", ByteSize.Describe(query.CapacityBytes)),
        ("data lines", CfiWords.Interface(query.Interface) ?? $"code {Number.Hex(query.Interface, 4)}, not known"),
        ("supply", Volts(query.SupplyVolts)),
        ("programming voltage", query.ProgrammingVolts is { } volts ? Volts(volts) : "none"),
        ("command set", $"{Number.Hex(query.CommandSet, 4)}, {CfiWords.CommandSet(query.CommandSet) ?? "not known"}"),
        ("byte or word", Time(query.UnitMicroseconds, "us")),
        ("buffer", query.BufferBytes == 0 ? "none" : $"{ByteSize.Words(query.BufferBytes)}, {Time(query.BufferMicroseconds, "us")}"),
        ("sector erase", Time(query.SectorMilliseconds, "ms")),
        ("chip erase", Time(query.ChipMilliseconds, "ms")),
        ("sectors", query.Map.IsEmpty ? "the whole chip" : SectorMapText.Format(query.Map)),
        ("own table", query.ExtendedVersion is { } version ? $"version {version}; boot sectors: {Boot(query)}" : "not in the dump"),
    ];

    private static string Boot(CfiQuery query) => query.Boot is { } end ? (end == BootEnd.Top ? "top" : "bottom") : "not said";

    private static string Volts((double Min, double Max) volts) => string.Create(CultureInfo.InvariantCulture, $"{volts.Min:0.0}-{volts.Max:0.0} V");

    private static string Time(CfiTime? time, string unit) => time is not { } known ? "not said"
        : string.Create(CultureInfo.InvariantCulture, $"{known.Typical} {unit} typical{(known.Longest is { } longest ? $", {longest} {unit} at most" : "")}");

    // The members of board:chips:SITE; none for a chip no manifest can describe.
    private static ImmutableArray<(string Name, string Text)> Members(CfiQuery query) => query.DataBus is not { } bus ? [] :
    [
        ("part", "NAME"),
        ("capacity", ByteSize.Format(query.CapacityBytes)),
        ("width", PartWords.Widths.Word(bus)),
        ("supply", Volts(query.SupplyVolts).Replace(" V", "", StringComparison.Ordinal)),
        ("sectors", query.Map.IsEmpty ? ByteSize.Format(query.CapacityBytes) : SectorMapText.Format(query.Map)),
    ];

    private static ImmutableArray<Part> Alike(CfiQuery query) =>
    [
        .. PartCatalog.BuiltIn.All.Where(part => part.CapacityBytes == query.CapacityBytes && part.DataBus == query.DataBus
            && part.Programming.CommonFlashInterface.Contains("yes", StringComparison.Ordinal)
            && (part.Sectors.Map.SequenceEqual(query.Map) || part.Sectors.Map.Reverse().SequenceEqual(query.Map))),
    ];

    private static void WriteJson(Utf8JsonWriter json, CfiQuery? query, ImmutableArray<Finding> findings)
    {
        json.WriteBoolean("decoded", query is not null);
        if (query is not null)
        {
            foreach (var (name, text) in Rows(query))
            {
                json.WriteString(Json.Name(name), text);
            }

            json.WriteNumber("capacityBytes", query.CapacityBytes);
            json.WriteStartObject("manifest");
            foreach (var (name, text) in Members(query))
            {
                json.WriteString(name, text);
            }

            json.WriteEndObject();
            Json.WriteTexts(json, "parts", Alike(query).Select(static part => part.Name));
        }

        Json.WriteFindings(json, findings);
    }
}
