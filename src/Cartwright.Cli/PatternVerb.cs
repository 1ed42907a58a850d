using System.CommandLine;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.TestImages;

namespace Cartwright.Cli;

/// <summary><c>cartwright pattern</c></summary>
internal static class PatternVerb
{
    private const int UsualWidth = 8;

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var kind = new Argument<string?>("kind") { Description = "The kind of test image; without one, all are listed.", Arity = ArgumentArity.ZeroOrOne };
        var file = new Argument<string?>("file") { Description = "For `fill`: the image whose unused space is filled.", Arity = ArgumentArity.ZeroOrOne };
        var board = new Option<string?>("--board") { Description = "The board, as `cartwright boards` lists it: every chip gets an image of its own.", HelpName = "id" };
        var part = new Option<string?>("--part") { Description = "The part at every site, or the single chip.", HelpName = "name" };
        var sizes = PatternOptions.Sizes();
        var width = PatternOptions.Width();
        var order = BoardInput.WordOrderOption();
        var seed = PatternOptions.Number("--seed", "Another number makes other images of the kinds with chance bits.", uint.MaxValue);
        var bank = PatternOptions.Size("--bank-size", "Bytes of a bank, for `banks` and `conflict`; without it 16KiB.");
        var value = PatternOptions.Number("--value", "For `fill`: the value of unused bytes; without it 0xFF.", byte.MaxValue);
        var shortest = PatternOptions.Size("--shortest", "For `fill`: shorter stretches are left alone; without it 1KiB.");
        var target = new Option<string>("--out") { Description = "The folder for the files.", HelpName = "folder", DefaultValueFactory = static _ => "." };
        var name = new Option<string?>("--name") { Description = "Stem of the files; without it the kind, for `fill` the image's own.", HelpName = "stem" };
        var platform = ImageInput.PlatformOption();
        var json = Verb.JsonOption();
        var verb = new Verb(
            "pattern",
            "Makes test images that show a board's wiring in one read-back.",
            "cartwright pattern signature --board md-double-8bit --size 512KiB --out cards",
            "cartwright pattern ruler --size 32KiB",
            "cartwright pattern fill game.sfc --board snes-single-8bit",
            "cartwright pattern retention memory.U1.bin at-once.bin next-day.bin")
        {
            kind, file, board, part, sizes, width, order, seed, bank, value, shortest, target, name, platform, json, RetentionVerb.Create(output, errors),
        };
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(kind) is not { } word)
            {
                PatternReport.WriteKinds(output, parsed.GetValue(json));
                return ExitCode.Done;
            }

            if (TestImageKinds.Find(word) is not { } found)
            {
                errors.WriteLine(NotFound.Line("test image", word, NearestName.Question(word, TestImageKinds.All.Select(static row => row.Name)), "pattern"));
                return ExitCode.Refused;
            }

            if (found != TestImageKinds.Fill && parsed.GetValue(file) is { } extra)
            {
                errors.WriteLine($"cartwright: `pattern {found.Name}` is made from nothing: `{extra}` is one word too many.");
                return ExitCode.Refused;
            }

            var settings = new TestImageSettings
            {
                Seed = (uint)PatternOptions.NumberOf(parsed.GetValue(seed), 0),
                BankSize = parsed.GetValue(bank) is { } size ? (int)PatternOptions.Bytes(size) : TestImageSettings.UsualBankSize,
            };
            var request = new PatternRequest(found, settings, parsed.GetValue(board), parsed.GetValue(part), PatternOptions.SizesOf(parsed.GetValue(sizes) ?? []), parsed.GetValue(width), parsed.GetValue(order));
            var log = new FindingLog();
            var files = found != TestImageKinds.Fill ? Make(request, parsed.GetValue(name) ?? found.Name, errors, log)
                : ImageInput.TryFind(parsed.GetValue(platform), errors, out var named) ? PatternFill.Make(
                    request,
                    parsed.GetValue(file),
                    named,
                    new FillRequest
                    {
                        Value = (byte)PatternOptions.NumberOf(parsed.GetValue(value), byte.MaxValue),
                        Shortest = parsed.GetValue(shortest) is { } length ? (int)PatternOptions.Bytes(length) : FillRequest.UsualShortest,
                        Seed = settings.Seed,
                    },
                    parsed.GetValue(name),
                    errors,
                    log)
                : null;
            return Finish(files, Path.GetFullPath(parsed.GetRequiredValue(target)), parsed.GetValue(json), output, errors, log);
        });
        return verb;
    }

    private static PatternFiles? Make(PatternRequest request, string name, TextWriter errors, FindingLog log) =>
        Target(request, errors, log) is { } target && RegionSizes.Of(target.Board, request.SizeOfAll ?? target.Size, request.Sizes.Remove(""), request.Place, log) is var sizes && !log.HasErrors
        && request.Builder(target.Board, log).Make(request.Kind, request.Settings, sizes) is { } set
            ? new PatternFiles(set, TestImageFiles.Plan(set, name))
            : null;

    private static (Board Board, long? Size)? Target(PatternRequest request, TextWriter errors, FindingLog log)
    {
        if (request.Board is { } id)
        {
            return BoardInput.TryFind(id, errors, out var board) ? (board, null) : null;
        }

        if (request.Part is { } name)
        {
            if (PartCatalog.BuiltIn.Find(name) is { } part)
            {
                return (SingleChip.Of(request.Width ?? (part.DataBus == PartDataBus.Sixteen ? 16 : UsualWidth)), part.CapacityBytes);
            }

            errors.WriteLine(NotFound.Line("part", name, PartCatalog.BuiltIn.Nearest(name) is { IsEmpty: false } nearest ? $"Did you mean {string.Join(" or ", nearest)}?" : null, "parts"));
            return null;
        }

        if (request.SizeOfAll is null)
        {
            log.Add(TestImageFindings.NoTarget, request.Place, "Neither a board nor a chip is named.");
            return null;
        }

        return (SingleChip.Of(request.Width ?? UsualWidth), null);
    }

    private static int Finish(PatternFiles? made, string folder, bool json, TextWriter output, TextWriter errors, FindingLog log)
    {
        foreach (var file in made?.Files ?? [])
        {
            _ = NewFile.IsFree(Path.Combine(folder, file.Name), log);
        }

        if (made is not null && !log.HasErrors)
        {
            OutputFiles.Write(folder, made.Files, new SourcePlace(folder), log);
        }

        var written = made is not null && !log.HasErrors;
        if (written)
        {
            PatternReport.Write(output, made!, folder, json);
        }

        ImageInput.WriteFindings(errors, log.ToSorted());
        return written ? ExitCode.Done : ExitCode.Refused;
    }
}
