using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Saves;

namespace Cartwright.Cli;

/// <summary><c>cartwright save new</c></summary>
internal static class SaveNewVerb
{
    private const string NoFill = "0xFF";

    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var platform = new Option<string>("--platform") { Description = "The platform of the cartridge.", HelpName = "id", Required = true };
        var size = PatternOptions.Size("--size", "Bytes of the memory.");
        size.Required = true;
        var layout = new Option<string>("--layout") { Description = "How the file is to be written; without it packed, as a chip's programmer wants it.", HelpName = "layout", DefaultValueFactory = static _ => SaveLayouts.Packed.Id };
        var fill = PatternOptions.Number("--fill", "Value of bytes nothing else covers; without it 0xFF.", byte.MaxValue);
        var content = new Option<string?>("--content") { Description = "A file that stands at the start of the memory.", HelpName = "file" };
        var seed = PatternOptions.Size("--seed", "Bytes of a seed at the start of the memory, of its own for each unit.");
        var cart = new Option<string?>("--cart") { Description = "With --seed: the cart's name, on which seeds depend.", HelpName = "name" };
        var unit = PatternOptions.Number("--unit", "With --seed: the unit's serial number.", int.MaxValue);
        var target = new Option<string>("--out", "-o") { Description = "The new file; one that is there is never written over.", HelpName = "file", Required = true };
        var verb = new Verb(
            "new",
            "Makes the first contents of a save memory: filler, a file, or a seed of its own for each unit of a run.",
            "cartwright save new --platform md --size 8KiB --out new.chip.bin",
            "cartwright save new --platform md --size 8KiB --content start.sav --layout odd-ff --out new.sav",
            "cartwright save new --platform gb --size 8KiB --seed 16 --cart lantern-tide --unit 7 --out 007.sav")
        {
            platform, size, layout, fill, content, seed, cart, unit, target,
        };
        verb.Validators.Add(result =>
        {
            var (isSeeded, isNamed) = (result.GetResult(seed) is not null, result.GetResult(cart) is not null && result.GetResult(unit) is not null);
            if ((isSeeded && !isNamed) || (isSeeded && result.GetResult(content) is not null))
            {
                result.AddError("--seed takes --cart and --unit with it, and no --content.");
            }
        });
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetRequiredValue(platform), errors, out var named))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var path = Path.GetFullPath(parsed.GetRequiredValue(target));
            var maker = new NewSave((int)Math.Min(PatternOptions.Bytes(parsed.GetValue(size)!), SaveFileChecks.LargestFile + 1L), (byte)PatternOptions.NumberOf(parsed.GetValue(fill), PatternOptions.NumberOf(NoFill, 0)));
            var memory = parsed.GetValue(seed) is { } seedSize ? maker.Seeded(parsed.GetValue(cart)!, PatternOptions.NumberOf(parsed.GetValue(unit), 0), (int)Math.Min(PatternOptions.Bytes(seedSize), SaveFileChecks.LargestFile + 1L), log)
                : parsed.GetValue(content) is not { } file ? maker.Blank()
                : ImageInput.Read(file, log) is { } contents ? maker.With(file, contents, log) : null;
            var form = SaveForm.Find(parsed.GetRequiredValue(layout));
            if (form is null)
            {
                log.Add(SaveFindings.UnknownLayout, new SourcePlace("--layout"), $"`{parsed.GetRequiredValue(layout)}` is no layout.", SaveForm.Words);
            }

            var made = memory is null || form is null || !NewFile.IsFree(path, log) ? null
                : new SaveConverter(path, new SaveConversion(named!.Facts.Id, new SaveForm(SaveLayouts.Packed, 0), form), log).Convert(memory);
            var written = made is not null && NewFile.Write(path, made.Bytes, log) is not null;
            ImageInput.WriteFindings(errors, log.ToSorted());
            if (!written)
            {
                errors.WriteLine("cartwright: nothing was written.");
                return ExitCode.Refused;
            }

            output.WriteLine($"Written {path}: {ByteSize.Describe(made!.Bytes.Length)}, layout {form}, CRC-32 {FileDigest.Of(made.Bytes.Span).Crc32Text}");
            return ExitCode.Done;
        });
        return verb;
    }
}
