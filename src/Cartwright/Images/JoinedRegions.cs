using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Images;

/// <summary>Lays the regions of a ROM into the joins of a board.</summary>
/// <param name="board">The board.</param>
/// <param name="log">Receives what is wrong.</param>
/// <param name="place">Where the board is named.</param>
internal sealed class JoinedRegions(Board board, FindingLog log, SourcePlace place)
{
    /// <summary>The ROM with a region for each join besides its own.</summary>
    public Rom Add(Rom rom) => board.Joins.IsEmpty ? rom : new Rom([.. rom.Regions, .. board.Joins.Select(join => Lay(join, rom)).OfType<RegionImage>()]);

    /// <summary>How much of a region, from its start, lies in joins without a gap.</summary>
    public static long Reach(Board board, string region)
    {
        var reach = 0L;
        foreach (var part in PartsOf(board, region).OrderBy(static part => part.Start))
        {
            reach = part.Start <= reach ? Math.Max(reach, part.End) : reach;
        }

        return reach;
    }

    /// <summary>Whether any join holds a part of a region.</summary>
    public static bool Holds(Board board, string region) => PartsOf(board, region).Any();

    private static IEnumerable<JoinPart> PartsOf(Board board, string region) =>
        board.Joins.SelectMany(static join => join.Parts).Where(part => string.Equals(part.Region, region, StringComparison.OrdinalIgnoreCase));

    private RegionImage? Lay(RegionJoin join, Rom rom)
    {
        var laid = join.Parts
            .Select(part => (Part: part, Bytes: rom[part.Region] is { } region && part.Start < region.Length ? region.Bytes[(int)part.Start..(int)Math.Min(part.End, region.Length)] : default))
            .Where(static row => row.Bytes.Length > 0)
            .OrderBy(static row => row.Part.At)
            .ToList();
        if (laid.Count == 0)
        {
            return null;
        }

        var bytes = new byte[laid.Max(static row => row.Part.At + row.Bytes.Length)];
        bytes.AsSpan().Fill(Blank.Erased);
        var end = 0L;
        foreach (var (part, own) in laid)
        {
            if (part.At < end)
            {
                log.Add(BoardFindings.RomTooLarge, place, $"In the join `{join.Name}` the region `{part.Region}` begins at {ByteSize.Describe(part.At)}, and what lies before it ends at {ByteSize.Describe(end)}.");
            }

            own.Span.CopyTo(bytes.AsSpan((int)part.At));
            end = part.At + own.Length;
        }

        return new RegionImage(join.Name, bytes, Blank.Erased, []);
    }
}
