using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Programs;

namespace Cartwright.Cli;

/// <summary><c>cartwright arrange back</c></summary>
internal static class ArrangeBackVerb
{
    public static Verb Create(TextWriter output, TextWriter errors)
    {
        var chips = new Argument<string[]>("chips") { Description = "What each chip holds: SITE=FILE, as U1=even.bin.", Arity = ArgumentArity.OneOrMore };
        var board = BoardInput.BoardOption();
        var order = BoardInput.WordOrderOption();
        var region = new Option<string?>("--region") { Description = "The region to put together, where the board has several.", HelpName = "name" };
        var size = new Option<string>("--size") { Description = "The region's length: chips may be larger than what they hold.", HelpName = "size", Required = true };
        var target = new Option<string>("--out") { Description = "The file for the region, which must not be there yet.", HelpName = "file", Required = true };
        var verb = new Verb(
            "back",
            "Puts the contents of a board's chips together to the region they were cut from.",
            "cartwright arrange back --board md-double-8bit --size 512KiB --out game.md U1=even.bin U2=odd.bin")
        {
            chips, board, order, region, size, target,
        };
        size.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => !ByteSize.TryParse(token.Value, out var bytes) || bytes is <= 0 or > ProgramInput.LargestFile))
            {
                result.AddError($"--size takes a size of up to 256 MiB such as 512KiB, not `{token.Value}`.");
            }
        });
        chips.Validators.Add(static result =>
        {
            foreach (var token in result.Tokens.Where(static token => token.Value.IndexOf('=', StringComparison.Ordinal) <= 0))
            {
                result.AddError($"a chip is given as SITE=FILE, not `{token.Value}`; for example U1=even.bin.");
            }
        });
        verb.SetAction(parsed =>
        {
            if (!BoardInput.TryFind(parsed.GetRequiredValue(board), errors, out var found))
            {
                return ExitCode.Refused;
            }

            var log = new FindingLog();
            _ = ByteSize.TryParse(parsed.GetRequiredValue(size), out var length);
            var bytes = new byte[length];
            var name = parsed.GetValue(region) ?? found.Sites[0].Region;
            PutBack(found, name, parsed.GetRequiredValue(chips), parsed.GetValue(order), bytes, log);
            var written = log.HasErrors ? null : NewFile.Write(Path.GetFullPath(parsed.GetRequiredValue(target)), bytes, log);
            ImageInput.WriteFindings(errors, log.ToSorted());
            if (written is not null)
            {
                output.WriteLine($"Region {name}, {ByteSize.Words(length)}. Written to {written}");
            }

            return log.HasErrors ? ExitCode.Refused : ExitCode.Done;
        });
        return verb;
    }

    private static void PutBack(Board board, string region, string[] chips, WordOrder order, byte[] bytes, FindingLog log)
    {
        var sites = board.Sites.Where(site => string.Equals(site.Region, region, StringComparison.OrdinalIgnoreCase) && ChipMerger.ContentOf(site, bytes) > 0).ToImmutableArray();
        var files = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var chip in chips)
        {
            files[chip[..chip.IndexOf('=', StringComparison.Ordinal)]] = chip[(chip.IndexOf('=', StringComparison.Ordinal) + 1)..];
        }

        var names = sites.Select(static site => site.Name).ToList();
        foreach (var wrong in files.Keys.Where(name => !names.Contains(name, StringComparer.OrdinalIgnoreCase)))
        {
            log.Add(InspectionFindings.ChipsDoNotFit, new SourcePlace(wrong), $"The board {board.Id} has no site `{wrong}` that holds bytes of the region `{region}`.", $"one of {string.Join(", ", names)}", NearestName.Question(wrong, names));
        }

        foreach (var site in sites)
        {
            if (!files.TryGetValue(site.Name, out var file))
            {
                log.Add(InspectionFindings.ChipsDoNotFit, new SourcePlace(site.Name), $"The chip of {site.Name} is missing: it holds bytes of the region `{region}`.", $"{site.Name}=FILE");
            }
            else if (ImageInput.Read(file, log) is { } held)
            {
                PutBack(board, site, file, held, order, bytes, log);
            }
        }
    }

    private static void PutBack(Board board, Site site, string file, byte[] held, WordOrder order, byte[] bytes, FindingLog log)
    {
        var needed = ChipMerger.Needs(site, bytes);
        if (held.Length < needed)
        {
            log.Add(InspectionFindings.ChipsDoNotFit, new SourcePlace(file), $"{file} has {ByteSize.Describe(held.Length)}, and {site.Name} holds {ByteSize.Describe(needed)} of the region.");
            return;
        }

        new ChipMerger(board).PutBack(site, held, order, bytes);
    }
}
