using System.CommandLine;
using System.Text;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Plans;

namespace Cartwright.Cli;

/// <summary><c>cartwright plan</c></summary>
internal static class PlanVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var files = new Argument<string[]>("files") { Description = "What the chip holds, and what it is to hold; one file alone is for a blank chip.", Arity = new ArgumentArity(1, 2) };
        var part = new Option<string?>("--part") { Description = "The part, as `cartwright parts` lists it.", HelpName = "name" };
        var sectors = new Option<string?>("--sectors") { Description = "The chip's sectors from address 0 upward, where the catalogue lacks them: \"16KiB 2x8KiB 32KiB 7x64KiB\".", HelpName = "map" };
        var boot = BootOption.Create();
        var width = new Option<int?>("--width") { Description = "Data lines in use, 8 or 16; the part's own when absent.", HelpName = "8|16" };
        var list = new Option<string?>("--list") { Description = "Writes what becomes of each sector into a new text file.", HelpName = "file" };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "plan",
            "Says which sectors of a chip have to be erased and programmed, and how long that takes.",
            "cartwright plan old.bin new.bin --part SST39SF040",
            "cartwright plan read-back.bin dist/lantern-tide.U1.bin --part MX29F400T --list sectors.txt",
            "cartwright plan new.bin --part M27C801")
        {
            files, part, sectors, boot, width, list, json,
        };
        verb.Validators.Add(result =>
        {
            if (result.GetValue(part) is null && result.GetValue(sectors) is null)
            {
                result.AddError("name the part with --part, or state its sectors with --sectors.");
            }
        });
        sectors.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => !SectorMapText.TryParse(token.Value, out _)))
            {
                result.AddError($"--sectors takes {SectorMapText.Forms}, not `{token.Value}`.");
            }
        });
        width.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => token.Value is not ("8" or "16")))
            {
                result.AddError($"--width takes 8 or 16, not `{token.Value}`.");
            }
        });
        verb.SetAction(parsed =>
        {
            _ = SectorMapText.TryParse(parsed.GetValue(sectors) ?? "", out var map);
            var log = new FindingLog();
            var name = parsed.GetValue(part);
            var found = name is null ? DescribedPart.Of("the chip", SectorGroup.TotalOf(map), parsed.GetValue(width) == 16 ? PartDataBus.Sixteen : PartDataBus.Eight, volts: null, map) : PartCatalog.BuiltIn.Find(name);
            if (found is null)
            {
                var nearest = PartCatalog.BuiltIn.Nearest(name!);
                errors.WriteLine(NotFound.Line("part", name!, nearest.IsEmpty ? null : $"Did you mean {string.Join(" or ", nearest)}?", "parts"));
                return ExitCode.Refused;
            }

            var options = new PlanOptions(BootOption.End(parsed.GetValue(boot)), map, parsed.GetValue(width));
            var plan = Plan(found, name ?? found.Name, options, parsed.GetRequiredValue(files), log);
            var written = plan is { IsPossible: true } && parsed.GetValue(list) is { } file ? WriteList(plan, name ?? found.Name, Path.GetFullPath(file), log) : null;
            return Tell(plan, name ?? found.Name, written, parsed.GetValue(json), output, errors, log);
        });
        return verb;
    }

    private static WritePlan? Plan(Part part, string name, PlanOptions options, string[] files, FindingLog log)
    {
        var target = PlanChecks.Target(part, name, options, new SourcePlace(files[^1]), log);
        var wanted = Read(files[^1], log);
        var old = files.Length > 1 ? Read(files[0], log) : null;
        if (log.HasErrors || target is null || wanted is null || PlanChecks.Plan(target, old, wanted, log) is not { } plan)
        {
            return null;
        }

        PartChecks.CheckWriting(part, Path.GetFileName(files[^1]), log, new SourcePlace(files[^1]));
        return plan;
    }

    private static string? WriteList(WritePlan plan, string name, string file, FindingLog log)
    {
        if (!File.Exists(file))
        {
            return NewFile.Write(file, Encoding.ASCII.GetBytes(SectorList.Write(plan, name)), log);
        }

        log.Add(InspectionFindings.InTheWay, new SourcePlace(file), $"There is a file {file} already.", remedy: "Move it away, or choose another name with --list.");
        return null;
    }

    private static PlanContents? Read(string file, FindingLog log) => ImageInput.Read(file, log) is { } bytes ? new PlanContents(file, bytes) : null;

    private static int Tell(WritePlan? plan, string name, string? list, bool json, TextWriter output, TextWriter errors, FindingLog log)
    {
        var findings = log.ToSorted();
        var refused = log.HasErrors && plan is not { IsPossible: false };
        plan = refused ? null : plan;
        if (json)
        {
            PlanReport.WriteJson(output, plan, name, list, findings);
        }
        else
        {
            ImageInput.WriteFindings(errors, findings);
            if (plan is not null)
            {
                PlanReport.WriteText(output, plan, name, list);
            }
        }

        return refused ? ExitCode.Refused : log.HasErrors ? ExitCode.Found : ExitCode.Done;
    }
}
