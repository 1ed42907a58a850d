using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save keep</c></summary>
internal static class SaveKeepVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var folder = new Argument<string>("folder") { Description = "The folder of the kept saves; made when it is not there." };
        var file = new Argument<string?>("file") { Description = "A save as it was read back.", Arity = ArgumentArity.ZeroOrOne };
        var second = new Argument<string?>("second-read") { Description = "A second read of the same memory.", Arity = ArgumentArity.ZeroOrOne };
        var unit = new Option<string?>("--unit") { Description = "The unit it came out of: its serial number.", HelpName = "id" };
        var date = new Option<string?>("--date") { Description = "The day it was read; without it, the day the file was written (UTC).", HelpName = "year-month-day" };
        var list = new Option<bool>("--list") { Description = "Lists what is kept, and looks whether each file is still what was kept." };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "keep",
            "Keeps copies of a save, generation by generation; none is ever replaced.",
            "cartwright save keep saves read-1.sav read-2.sav --unit 000101",
            "cartwright save keep saves --list")
        {
            folder, file, second, unit, date, list, json,
        };
        verb.Validators.Add(result =>
        {
            ManifestInput.RefuseEmpty(result, "an empty name is neither a folder nor a file.");
            if (result.GetValue(list) == (result.GetValue(file) is not null))
            {
                result.AddError("name a save to keep, or ask with --list what is kept; one of the two.");
            }
            else if (!result.GetValue(list) && result.GetValue(unit) is null)
            {
                result.AddError("say with --unit which unit the save came out of.");
            }
        });
        verb.SetAction(parsed =>
        {
            var log = new FindingLog();
            var archive = new SaveArchive(Path.GetFullPath(parsed.GetRequiredValue(folder)));
            if (parsed.GetValue(file) is not { } named)
            {
                Report(archive.List(log), parsed.GetValue(json), output, errors, log);
                return log.HasErrors ? ExitCode.Found : ExitCode.Done;
            }

            var read = Read(named, parsed.GetValue(second), parsed.GetValue(unit)!, parsed.GetValue(date), log);
            ImmutableArray<SaveGeneration> kept = read is not null && archive.Keep(read, log) is { } made ? [made] : [];
            Report(kept, parsed.GetValue(json), output, errors, log);
            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    private static SaveRead? Read(string file, string? second, string unit, string? date, FindingLog log)
    {
        var given = date is null ? null : GenerationIndex.ParseDate(date);
        if (date is not null && given is null)
        {
            log.Add(KeepFindings.BadDate, new SourcePlace("--date"), $"`{date}` is no day.", "year-month-day, as in 2026-11-25");
        }

        if (second is not null && Path.GetFullPath(file) == Path.GetFullPath(second))
        {
            log.Add(KeepFindings.SameFile, new SourcePlace(second), $"{second} is the first read.");
        }

        var bytes = ImageInput.Read(file, log);
        var again = second is null ? null : ImageInput.Read(second, log);
        return bytes is null || log.HasErrors ? null : new SaveRead(unit, given ?? DateOnly.FromDateTime(File.GetLastWriteTimeUtc(file)), given is not null, file, bytes, again);
    }

    private static void Report(ImmutableArray<SaveGeneration> generations, bool json, TextWriter output, TextWriter errors, FindingLog log)
    {
        if (json)
        {
            Json.Write(output, writer =>
            {
                writer.WriteStartArray("generations");
                foreach (var generation in generations)
                {
                    writer.WriteStartObject();
                    GenerationIndex.WriteGeneration(writer, generation);
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
                Json.WriteFindings(writer, log.ToSorted());
            });
            return;
        }

        ImageInput.WriteFindings(errors, log.ToSorted());
        Columns.Write(output, "",
        [
            .. generations.Select(static generation => new[]
            {
                generation.Unit, FormattableString.Invariant($"generation {generation.Number}"), GenerationIndex.Text(generation.Date) + (generation.IsDateGiven ? "" : " (of the file)"),
                $"reads: {GenerationIndex.Word(generation.Reads)}", ByteSize.Words(generation.Files[0].Bytes), string.Join(", ", generation.Files.Select(static file => file.Name)),
            }),
        ]);
    }
}
