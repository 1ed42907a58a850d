using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary><c>cartwright arrange</c></summary>
internal static class ArrangeVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<string>("file") { Description = "The image." };
        var board = BoardOption();
        var order = WordOrderOption();
        var target = new Option<string>("--out") { Description = "The folder for the chip files.", HelpName = "folder", DefaultValueFactory = static _ => "." };
        var platform = ImageInput.PlatformOption();
        var verb = new Verb(
            "arrange",
            "Cuts an existing image into chip files for a board; `arrange back` puts chips together again, `arrange find` where nobody knows how.",
            "cartwright arrange game.md --board md-double-8bit --out chips",
            "cartwright arrange back --board md-double-8bit --size 512KiB --out game.md U1=even.bin U2=odd.bin")
        {
            file, board, order, target, platform, ArrangeBackVerb.Create(output, errors), ArrangeFindVerb.Create(output, errors),
        };
        verb.SetAction(parsed =>
        {
            if (!ImageInput.TryFind(parsed.GetValue(platform), errors, out var named) || !TryFindBoard(parsed.GetRequiredValue(board), errors, out var found))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            var name = parsed.GetRequiredValue(file);
            var chips = ImageInput.Open(name, named, log) is { } image ? Cut(image, found, parsed.GetValue(order), log) : [];
            var folder = Path.GetFullPath(parsed.GetRequiredValue(target));
            if (!log.HasErrors)
            {
                Write(output, chips, Path.GetFileNameWithoutExtension(name), folder, log);
            }

            ImageInput.WriteFindings(errors, log.ToSorted());
            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    public static Option<string> BoardOption() => new("--board") { Description = "The board, as `cartwright boards` lists it.", HelpName = "id", Required = true };

    public static Option<WordOrder> WordOrderOption() => new("--word-order") { Description = "Order of the two bytes of a word in files of 16-bit chips.", HelpName = "bus|programmer" };

    public static bool TryFindBoard(string name, TextWriter errors, out Board board)
    {
        var found = BoardCatalog.Find(name);
        board = found!;
        if (found is null)
        {
            errors.WriteLine(NotFound.Line("board", name, NearestName.Question(name, BoardCatalog.Ids), "boards"));
        }

        return found is not null;
    }

    private static ImmutableArray<ChipImage> Cut(OpenedImage image, Board board, WordOrder order, FindingLog log)
    {
        var settings = new BoardSettings(new ManifestValue(board.Id, new SourcePlace(image.File)), default, ImmutableSortedDictionary<string, ChipSettings>.Empty);
        return new ChipImageBuilder(board, settings, new ImageSettings("", new SourcePlace(image.File), [ImageFormat.Raw], order), log).Build(image.Cart.Rom);
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
