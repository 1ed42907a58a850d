using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Runtime.InteropServices;
using Cartwright.Findings;
using Cartwright.Proofs;

namespace Cartwright.Cli;

/// <summary><c>cartwright prove</c></summary>
internal static class ProveVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var expected = new Argument<string>("expected") { Description = "What the chip should hold: a record (.record.json), a manifest or its folder, a chip file, or with --board a whole ROM." };
        var reads = new Argument<string[]>("readback") { Description = "What was read, in the order in which it was.", Arity = ArgumentArity.ZeroOrMore };
        var site = new Option<string?>("--site") { Description = "The chip that was read by itself, as U1.", HelpName = "site" };
        var cartridge = new Option<bool>("--cartridge") { Description = "The reads are of the whole cartridge, through its edge." };
        var region = new Option<string?>("--region") { Description = "The region of the cartridge that was read, where it has several.", HelpName = "name" };
        var board = new Option<string?>("--board") { Description = "Takes what is expected as a whole ROM for this board, as `cartwright boards` lists it.", HelpName = "id" };
        var platform = ImageInput.PlatformOption();
        var part = new Option<string?>("--part") { Description = "The part, as `cartwright parts` lists it: its pins are named.", HelpName = "name" };
        var package = new Option<string?>("--package") { Description = "The part's package, as DIP32; without it all it comes in.", HelpName = "name" };
        var width = PatternOptions.Width();
        var order = ProveOptions.Order();
        var written = ProveOptions.Written();
        var inPlace = new Option<bool>("--in-place") { Description = "The same as --written in-place." };
        var insertions = ProveOptions.Numbers("--insertions", "The insertion each read was made in, as 1,1,2; without it one for all.");
        var programmings = ProveOptions.Numbers("--programmings", "The programming each read came after, as 1,1,2; without it one for all.");
        var old = new Option<string?>("--old") { Description = "What the chip held before.", HelpName = "file" };
        var otherSites = Files("--other-site", "The image of another chip of the build; those of a record are known.");
        var releases = Files("--release", "The chip image of another release.");
        var otherChips = Files("--other-chip", "The image of a second chip on the bus.");
        var ranges = ProveOptions.Ranges();
        var bank = PatternOptions.Size("--bank-size", "Bytes of a bank, to tell where differences lie.");
        var units = ProveOptions.Units();
        var diagnosable = new Option<bool>("--diagnosable") { Description = "Needs no read-back: says which faults a read of this image could not show." };
        var set = ManifestInput.SetOption();
        var brief = new Option<bool>("--brief") { Description = "Says one line for each chip." };
        var json = Verb.JsonOption();
        var verb = new Verb(
            "prove",
            "Proves read-backs equal to a build, or names the fault: the line, the chip's pin, the pins beside it.",
            "cartwright prove dist/lantern-tide.record.json read-1.bin read-2.bin --site U1",
            "cartwright prove signature.U1.bin read.bin --part SST39SF040",
            "cartwright prove game.md cartridge.bin --board md-double-8bit",
            "cartwright prove dist/lantern-tide.record.json --unit A=a.bin --unit B=b.bin",
            "cartwright prove dist/lantern-tide.U1.bin --diagnosable")
        {
            expected, reads, site, cartridge, region, board, platform, part, package, width, order, written, inPlace, insertions, programmings, old, otherSites, releases, otherChips, ranges, bank, units, diagnosable, set, brief, json,
        };
        verb.Validators.Add(result =>
        {
            if (result.GetValue(diagnosable) && (result.GetResult(reads) is { Tokens.Count: > 0 } || result.GetResult(units) is not null))
            {
                result.AddError("--diagnosable looks at the image alone: leave the read-backs out.");
            }

            if (result.GetValue(cartridge) && result.GetValue(site) is not null)
            {
                result.AddError("--site names a chip that was read by itself, and --cartridge says that the whole was read: one of the two.");
            }

            if (result.GetResult(reads) is { Tokens.Count: > 0 } && result.GetResult(units) is not null)
            {
                result.AddError("name every read with --unit, or none: a read without a name belongs to no unit.");
            }
        });
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out _))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            ImmutableArray<ProofRead> given = [.. (parsed.GetValue(reads) ?? []).Select(static file => new ProofRead(file)), .. (parsed.GetValue(units) ?? []).Select(ProveOptions.UnitRead)];
            var inserted = Numbers(parsed.GetValue(insertions), given.Length, "--insertions", log);
            var programmed = Numbers(parsed.GetValue(programmings), given.Length, "--programmings", log);
            var task = new ProofTask(parsed.GetRequiredValue(expected), [.. given.Select((read, i) => read with { Insertion = inserted[i], Programming = programmed[i] })])
            {
                Overrides = ManifestInput.Overrides(parsed.GetValue(set) ?? []),
                Board = parsed.GetValue(board),
                Platform = parsed.GetValue(platform),
                Site = parsed.GetValue(site),
                IsCartridge = parsed.GetValue(cartridge),
                Region = parsed.GetValue(region),
                Width = parsed.GetValue(width),
                WordOrder = parsed.GetValue(order),
                Part = parsed.GetValue(part),
                Package = parsed.GetValue(package),
                World = ProveOptions.WorldOf(parsed.GetValue(written), parsed.GetValue(inPlace)),
                Old = parsed.GetValue(old),
                OtherSites = [.. parsed.GetValue(otherSites) ?? []],
                Releases = [.. parsed.GetValue(releases) ?? []],
                OtherChips = [.. parsed.GetValue(otherChips) ?? []],
                MayDiffer = [.. (parsed.GetValue(ranges) ?? []).Select(ProveOptions.RangeOf).OfType<ByteRange>()],
                BankSize = parsed.GetValue(bank) is { } size ? (int)PatternOptions.Bytes(size) : 0,
            };
            return log.HasErrors ? Refuse(errors, log) : Run(task, parsed.GetValue(diagnosable), new ProveForm(parsed.GetValue(json), parsed.GetValue(brief)), output, errors, log);
        });
        return verb;
    }

    private static Option<string[]> Files(string name, string description) => new(name) { Description = description, HelpName = "file" };

    private static ImmutableArray<int> Numbers(string? text, int reads, string option, FindingLog log)
    {
        var numbers = ProveOptions.NumbersOf(text);
        if (text is not null && numbers.Length != reads)
        {
            log.Add(ProofFindings.NumbersDiffer, new SourcePlace(option), string.Create(CultureInfo.InvariantCulture, $"{option} gives {numbers.Length} numbers, and there are {reads} read-backs."));
        }

        return text is null || log.HasErrors ? [.. Enumerable.Repeat(1, reads)] : numbers;
    }

    private static int Refuse(TextWriter errors, FindingLog log)
    {
        ImageInput.WriteFindings(errors, log.ToSorted());
        return ExitCode.Refused;
    }

    private static int Run(ProofTask task, bool diagnosable, ProveForm form, TextWriter output, TextWriter errors, FindingLog log)
    {
        using var stop = new CancellationTokenSource();
        using var signal = PosixSignalRegistration.Create(PosixSignal.SIGINT, context =>
        {
            context.Cancel = true;
            stop.Cancel();
        });
        try
        {
            using var progress = new ProveProgress(errors);
            var prover = new CartProver(log) { Searching = progress.Begin };
            return diagnosable ? Diagnose(prover, task, form, progress, output, errors, log, stop.Token) : Prove(prover, task, form, progress, output, errors, log, stop.Token);
        }
        catch (OperationCanceledException)
        {
            errors.WriteLine("cartwright: stopped; nothing was decided.");
            return ExitCode.Refused;
        }
    }

    private static int Prove(CartProver prover, ProofTask task, ProveForm form, ProveProgress progress, TextWriter output, TextWriter errors, FindingLog log, CancellationToken cancel)
    {
        var report = prover.Prove(task, cancel);
        progress.End();
        var findings = log.ToSorted();
        if (form.IsJson)
        {
            ProveJson.Write(output, report, task, findings);
        }
        else
        {
            ImageInput.WriteFindings(errors, findings);
            if (report is not null)
            {
                ProveReport.Write(output, report, form.IsBrief);
            }
        }

        return report is null ? ExitCode.Refused : report.IsEqual ? ExitCode.Done : ExitCode.Found;
    }

    private static int Diagnose(CartProver prover, ProofTask task, ProveForm form, ProveProgress progress, TextWriter output, TextWriter errors, FindingLog log, CancellationToken cancel)
    {
        var diagnoses = prover.Diagnose(task, cancel);
        progress.End();
        var findings = log.ToSorted();
        if (form.IsJson)
        {
            DiagnosisReport.WriteJson(output, diagnoses, findings);
        }
        else
        {
            ImageInput.WriteFindings(errors, findings);
            DiagnosisReport.WriteText(output, diagnoses, form.IsBrief);
        }

        return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
    }
}
