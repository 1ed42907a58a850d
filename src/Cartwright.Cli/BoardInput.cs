using System.Collections.Immutable;
using System.CommandLine;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Inspection;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>What the verbs that lay an image onto chips have in common: the board, and the chips on it.</summary>
internal static class BoardInput
{
    public static Option<string> BoardOption() => new("--board") { Description = "The board, as `cartwright boards` lists it.", HelpName = "id", Required = true };

    public static Option<string?> OptionalBoardOption() => new("--board") { Description = "Also says what changes on the chips of this board.", HelpName = "id" };

    public static Option<WordOrder> WordOrderOption() => new("--word-order") { Description = "Order of the two bytes of a word in files of 16-bit chips.", HelpName = "bus|programmer" };

    public static bool TryFind(string name, TextWriter errors, out Board board)
    {
        var found = BoardCatalog.Find(name);
        board = found!;
        if (found is null)
        {
            errors.WriteLine(NotFound.Line("board", name, NearestName.Question(name, BoardCatalog.Ids), "boards"));
        }

        return found is not null;
    }

    public static Option<string[]> ChipOption() => new("--chip") { Description = "The part at a site, as U1=SST39SF040; once for each site.", HelpName = "site=part" };

    /// <summary>The parts by site.</summary>
    public static ImmutableSortedDictionary<string, ManifestValue> Parts(string[]? chips, FindingLog log)
    {
        var parts = ImmutableSortedDictionary.CreateBuilder<string, ManifestValue>(StringComparer.OrdinalIgnoreCase);
        foreach (var chip in chips ?? [])
        {
            if (chip.Split('=', 2) is [{ Length: > 0 } site, { Length: > 0 } part])
            {
                parts[site] = new ManifestValue(part, new SourcePlace("--chip"));
            }
            else
            {
                log.Add(InspectionFindings.ChipsDoNotFit, new SourcePlace("--chip"), $"`{chip}` names no site and part.", "SITE=PART, such as U1=SST39SF040");
            }
        }

        return parts.ToImmutable();
    }
}
