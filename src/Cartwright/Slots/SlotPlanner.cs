using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Slots;

/// <summary>Gives every game a slot: a power of two at a multiple of itself. Source: address lines choose by halves; common practice of boards with several games.</summary>
/// <param name="programs">What the cart's own programs occupy.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class SlotPlanner(ImmutableArray<PlacedSegment> programs, FindingLog log)
{
    private readonly List<(string Region, long Start, long End, string Name)> _taken =
        [.. programs.Where(static segment => segment.Offset >= 0).Select(static segment => (segment.Region, segment.Offset, segment.End, segment.Program))];

    /// <summary>Places one game, with the regions of its image.</summary>
    public IEnumerable<PlacedSlot> Place(int index, SlotGame game, Rom rom)
    {
        foreach (var region in rom.Regions)
        {
            var size = game.Size ?? (long)BitOperations.RoundUpToPowerOf2((ulong)region.Length);
            if (Check(game, region, size) && FreePlace(game, region.Name, size) is { } start)
            {
                _taken.Add((region.Name, start, start + size, game.Title));
                yield return new PlacedSlot(index, game.Title, ProgramEntry.NameOf(game.File), region.Name, start, size, region.Bytes);
            }
        }
    }

    private bool Check(SlotGame game, RegionImage region, long size)
    {
        if (!long.IsPow2(size) || (game.At ?? 0) % size != 0)
        {
            log.Add(SlotFindings.Misaligned, game.Place, $"The slot of `{game.Title}` has {ByteSize.Describe(size)}{(game.At is { } at ? $" at {Number.Hex(at, 6)}" : "")}.");
            return false;
        }

        if (region.Length > size)
        {
            log.Add(SlotFindings.TooLarge, game.Place, $"`{game.Title}` has {ByteSize.Describe(region.Length)} in the region `{region.Name}`, and its slot {ByteSize.Describe(size)}.");
            return false;
        }

        return true;
    }

    private long? FreePlace(SlotGame game, string region, long size)
    {
        var start = game.At ?? 0;
        while (Meets(region, start, size) is { } other)
        {
            if (game.At is not null)
            {
                log.Add(SlotFindings.Collision, game.Place,
                    $"The slot of `{game.Title}` at {Number.Hex(start, 6)}-{Number.Hex(start + size - 1, 6)} of the region `{region}` meets {other.Name} at {Number.Hex(other.Start, 6)}-{Number.Hex(other.End - 1, 6)}.");
                return null;
            }

            start = (other.End + size - 1) / size * size;
        }

        return start;
    }

    private (long Start, long End, string Name)? Meets(string region, long start, long size)
    {
        foreach (var taken in _taken)
        {
            if (string.Equals(taken.Region, region, StringComparison.OrdinalIgnoreCase) && taken.Start < start + size && start < taken.End)
            {
                return (taken.Start, taken.End, taken.Name);
            }
        }

        return null;
    }
}
