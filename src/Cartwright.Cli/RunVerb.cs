using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Production;

namespace Cartwright.Cli;

/// <summary><c>cartwright run</c></summary>
internal static class RunVerb
{
    private const long MostUnits = 100_000;

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var manifest = ManifestInput.Argument();
        var units = new Option<long>("--units") { Description = "How many units to make.", HelpName = "number" };
        var first = new Option<long>("--first") { Description = "Serial number of the first unit.", HelpName = "number", DefaultValueFactory = static _ => 1 };
        var table = new Option<string?>("--table") { Description = "The units out of a table instead: comma-separated text with a column `serial` and one for each text field.", HelpName = "file" };
        var sectors = new Option<bool>("--only-sectors") { Description = "Writes the chip files all units share once, and of each unit only the sectors that differ." };
        var folder = new Option<string?>("--out") { Description = "The folder for units and ledger; without it, `run` in the manifest's output folder.", HelpName = "folder" };
        var set = ManifestInput.SetOption();
        var json = Verb.JsonOption();
        var verb = new Verb(
            "run",
            "Makes the units of a production run: a serial number and chip files for each, and a ledger of them all.",
            "cartwright run cart.json --units 50 --first 101",
            "cartwright run cart.json --table units.csv --out run-2 --only-sectors")
        {
            manifest, units, first, table, sectors, folder, set, json,
        };
        verb.Validators.Add(result =>
        {
            if ((result.GetResult(table) is null) == (result.GetResult(units) is null))
            {
                result.AddError("say how many units with --units, or name them with --table; one of the two.");
            }
            else if (result.GetResult(units) is not null && (result.GetValue(units) is < 1 or > MostUnits || result.GetValue(first) < 0))
            {
                result.AddError(string.Create(CultureInfo.InvariantCulture, $"--units takes 1 to {MostUnits}, and --first a number of 0 or more."));
            }
        });
        verb.SetAction(parsed =>
        {
            var request = new BuildRequest(ManifestInput.Path(parsed.GetRequiredValue(manifest))) { Overrides = ManifestInput.Overrides(parsed.GetValue(set) ?? []) };
            var build = CartBuilder.Default.Build(request);
            var log = new FindingLog();
            var wanted = build.HasErrors ? [] : parsed.GetValue(table) is { } file
                ? ImageInput.Read(file, log) is { } text ? UnitTable.Read(file, text, build.Manifest!.Run.Fields, log) : []
                : Numbered(parsed.GetValue(first), parsed.GetValue(units));
            var target = Path.GetFullPath(parsed.GetValue(folder) ?? Path.Combine(build.OutputFolder.Length > 0 ? build.OutputFolder : ".", "run"));
            var made = build.HasErrors || log.HasErrors ? [] : new ProductionRun(build, new RunRequest(target, new SourcePlace("--out"), wanted) { OnlySectors = parsed.GetValue(sectors) }).Make(log);
            Report(build, made, target, build.Findings.AddRange(log.ToSorted()), parsed.GetValue(json), output, errors);
            return build.HasErrors || log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    private static ImmutableArray<RunUnit> Numbered(long first, long units) =>
        [.. Enumerable.Range(0, (int)units).Select(unit => RunUnit.Numbered(first + unit))];

    private static void Report(CartBuild build, ImmutableArray<LedgerEntry> made, string folder, ImmutableArray<Finding> findings, bool json, TextWriter output, TextWriter errors)
    {
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteNumber("made", made.Length);
                writer.WriteString("folder", folder);
                writer.WriteStartArray("units");
                foreach (var entry in made)
                {
                    writer.WriteStartObject();
                    writer.WriteNumber("serial", entry.Serial);
                    writer.WriteString("label", entry.Label);
                    Json.WriteTexts(writer, "files", entry.Files.Select(static file => file.Name));
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
                Json.WriteFindings(writer, findings);
            });
            return;
        }

        ImageInput.WriteFindings(errors, findings);
        if (made.IsEmpty)
        {
            errors.WriteLine("cartwright: nothing was written.");
            return;
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{build.Manifest!.Cart.Name}: {made.Length} unit{(made.Length == 1 ? "" : "s")}, serial number{(made.Length == 1 ? $" {made[0].Serial}" : $"s {made[0].Serial} to {made[^1].Serial}")}"));
        output.WriteLine($"Written into {folder}, with {build.Manifest.Cart.Name}.ledger.json and .csv");
    }
}
