using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Images;

/// <summary>Cuts the ROM of an existing image for a board, where no manifest says anything of the chips.</summary>
/// <param name="board">The board.</param>
/// <param name="parts">The part at each site that is known, by the site's name.</param>
/// <param name="order">Word order of files for 16-bit chips.</param>
public sealed class ChipCutter(Board board, ImmutableSortedDictionary<string, ManifestValue> parts, WordOrder order)
{
    /// <summary>Makes the images.</summary>
    /// <param name="rom">The ROM.</param>
    /// <param name="file">The image as the user named it.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>One image a site that holds anything, in the order of the board.</returns>
    public ImmutableArray<ChipImage> Cut(Rom rom, string file, FindingLog log)
    {
        var chips = parts.ToImmutableSortedDictionary(static row => row.Key, static row => new ChipSettings(row.Key, row.Value.Place, row.Value, null, null), StringComparer.OrdinalIgnoreCase);
        var settings = new BoardSettings(new ManifestValue(board.Id, new SourcePlace(file)), default, chips);
        return new ChipImageBuilder(board, settings, new ImageSettings("", new SourcePlace(file), [ImageFormat.Raw], order), log).Build(rom);
    }
}
