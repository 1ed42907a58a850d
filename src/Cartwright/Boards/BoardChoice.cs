using System.Collections.Frozen;
using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Boards;

/// <summary>Finds the board a manifest means, and holds it against the cart.</summary>
public static class BoardChoice
{
    // What a manifest may say of a board it takes from the catalogue.
    private static readonly FrozenSet<string> BesideUse = new[] { "use", "chips" }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>The board of the catalogue or the one described in the manifest.</summary>
    /// <param name="settings">What the manifest says.</param>
    /// <param name="ownId">Id for a board described in the manifest.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when there is none, or it is wrong.</returns>
    public static Board? Find(BoardSettings settings, string ownId, FindingLog log)
    {
        var described = settings.Section.Names.FirstOrDefault(static name => !BesideUse.Contains(name));
        if (settings.Use is not { } use)
        {
            if (described is not null)
            {
                return BoardReader.Read(settings.Section, settings.Section.Text("name", log)?.Text ?? ownId, log);
            }

            log.Add(BoardFindings.None, settings.Section.Place, "The manifest names no board, so no chip files are made.");
            return null;
        }

        if (described is not null)
        {
            log.Add(BoardFindings.Contradiction, settings.Section[described].Place,
                $"The manifest uses the board {use.Text} of the catalogue, and `{described}` describes another.", "`use`, or a whole board described in place");
        }

        var board = BoardCatalog.Find(use.Text);
        if (board is null)
        {
            log.Add(BoardFindings.Unknown, use.Place, $"There is no board `{use.Text}`.", "an id that `cartwright boards` lists", NearestName.Question(use.Text, BoardCatalog.Ids));
        }

        return board;
    }

    /// <summary>Holds a board against the cart it is to carry.</summary>
    /// <param name="board">The board.</param>
    /// <param name="settings">What the manifest says.</param>
    /// <param name="platform">The names of the cart's platform, its id first.</param>
    /// <param name="header">The text of a header field; null for one the cart does not have.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static void Check(Board board, BoardSettings settings, ImmutableArray<string> platform, Func<string, string?> header, FindingLog log)
    {
        var place = settings.Use?.Place ?? settings.Section.Place;
        if (board.Platform is { } id && !platform.Contains(id, StringComparer.OrdinalIgnoreCase))
        {
            log.Add(BoardFindings.OtherPlatform, place, $"The board {board.Id} is for {id}, and the cart is for {platform[0]}.");
        }

        foreach (var (field, values) in board.Expects)
        {
            if (header(field) is { } value && !values.Contains(value, StringComparer.OrdinalIgnoreCase))
            {
                log.Add(BoardFindings.NotWiredFor, place, $"The board {board.Id} is wired for `{field}` {string.Join(" or ", values)}, and the header says {value}.");
            }
        }
    }
}
