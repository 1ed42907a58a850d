using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright arrange</c></summary>
internal static class ArrangeVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The image." };
        var board = BoardInput.BoardOption();
        var chips = BoardInput.ChipOption();
        var order = BoardInput.WordOrderOption();
        var target = new Option<string>("--out") { Description = "The folder for the chip files.", HelpName = "folder", DefaultValueFactory = static _ => "." };
        var platform = ImageInput.PlatformOption();
        var verb = new Verb(
            "arrange",
            "Cuts an existing image into chip files for a board; `arrange back` puts chips together again, `arrange find` where nobody knows how.",
            "cartwright arrange game.md --board md-double-8bit --out chips",
            "cartwright arrange game.sfc --board snes-single-8bit --chip U1=SST39SF040",
            "cartwright arrange back --board md-double-8bit --size 512KiB --out game.md U1=even.bin U2=odd.bin")
        {
            file, board, chips, order, target, platform, ArrangeBackVerb.Create(output, errors), ArrangeFindVerb.Create(output, errors),
        };
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named) || !BoardInput.TryFind(parsed.GetRequiredValue(board), errors, out var found))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var parts = BoardInput.Parts(parsed.GetValue(chips), log);
            var name = parsed.GetRequiredValue(file);
            var images = ImageInput.Open(name, named, log) is { } image ? new ChipCutter(found, parts, parsed.GetValue(order)).Cut(image.Cart.Rom, name, log) : [];
            var folder = Path.GetFullPath(parsed.GetRequiredValue(target));
            if (!log.HasErrors)
            {
                Write(output, images, Path.GetFileNameWithoutExtension(name), folder, log);
            }

            ImageInput.WriteFindings(errors, log.ToSorted());
            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    private static void Write(TextWriter output, ImmutableArray<ChipImage> chips, string stem, string folder, FindingLog log)
    {
        var files = chips.Select(chip => NewFile.Of(Path.Combine(folder, $"{stem}.{chip.Site.Name}.bin"), chip.Bytes)).ToImmutableArray();
        foreach (var file in files)
        {
            _ = NewFile.IsFree(Path.Combine(folder, file.Name), log);
        }

        if (!log.HasErrors)
        {
            OutputFiles.Write(folder, files, new SourcePlace(folder), log);
        }

        if (!log.HasErrors)
        {
            output.WriteLine($"Written into {folder}");
            Columns.Write(output, "  ", [.. chips.Zip(files).Select(static row => new[] { row.First.Site.Name, row.Second.Name, ByteSize.Words(row.First.Capacity), $"first word {row.First.WordText(0)}" })]);
        }
    }
}
