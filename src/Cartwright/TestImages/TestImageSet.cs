using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Images;
using Cartwright.Roms;

namespace Cartwright.TestImages;

/// <summary>A test image laid onto the chips of a board. What is burnt is also what a read-back must show.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Settings">What was chosen.</param>
/// <param name="Board">The board; for a single chip one with a single site.</param>
/// <param name="Chips">What each chip holds, and so what a read of the loose chip must show.</param>
/// <param name="Regions">What a read of the whole cartridge must show, as the console sees it.</param>
public sealed record TestImageSet(
    TestImageKind Kind,
    TestImageSettings Settings,
    Board Board,
    ImmutableArray<ChipImage> Chips,
    ImmutableArray<RegionImage> Regions)
{
    /// <summary>Unused stretches that were filled.</summary>
    public ImmutableArray<FilledStretch> Filled { get; init; } = [];

    /// <summary>The seed of a chip: the number of its site on the board, from 1, and the seed that was chosen.</summary>
    /// <param name="chip">The chip.</param>
    public uint SeedOf(ChipImage chip) => SeedOf(Board, Settings, chip.Site);

    internal static uint SeedOf(Board board, TestImageSettings settings, Site site) => unchecked(settings.Seed + (uint)board.Sites.IndexOf(site) + 1);
}
