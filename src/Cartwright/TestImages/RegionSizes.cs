using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;

namespace Cartwright.TestImages;

/// <summary>How long the regions of a board are to be.</summary>
public static class RegionSizes
{
    /// <summary>The lengths that were given, and for the other regions what the board's sites hold.</summary>
    /// <param name="board">The board.</param>
    /// <param name="forAll">Length in bytes of every region; null when not given.</param>
    /// <param name="byRegion">Lengths in bytes by region.</param>
    /// <param name="place">Where findings point.</param>
    /// <param name="log">Receives what is wrong.</param>
    public static ImmutableSortedDictionary<string, long> Of(Board board, long? forAll, IReadOnlyDictionary<string, long> byRegion, SourcePlace place, FindingLog log)
    {
        var names = board.Sites.Select(static site => site.Region).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        foreach (var wrong in byRegion.Keys.Where(name => !names.Contains(name, StringComparer.OrdinalIgnoreCase)))
        {
            log.Add(TestImageFindings.NoSize, place, $"The board {board.Id} has no region `{wrong}`.", $"one of {string.Join(", ", names)}", NearestName.Question(wrong, names));
        }

        var sizes = ImmutableSortedDictionary.CreateBuilder<string, long>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            var given = byRegion.FirstOrDefault(row => string.Equals(row.Key, name, StringComparison.OrdinalIgnoreCase)).Value;
            if ((given > 0 ? given : forAll ?? Held(board, name)) is { } size)
            {
                sizes[name] = size;
            }
            else
            {
                log.Add(TestImageFindings.NoSize, place, $"The board {board.Id} does not say how long its region `{name}` is.");
            }
        }

        return sizes.ToImmutable();
    }

    private static long? Held(Board board, string region)
    {
        var sites = board.Sites.Where(site => string.Equals(site.Region, region, StringComparison.OrdinalIgnoreCase)).ToList();
        return sites.TrueForAll(static site => site.Length is not null && site.Every is null) ? sites.Max(static site => site.End) : null;
    }
}
