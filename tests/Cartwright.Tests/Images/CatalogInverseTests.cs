using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>Chips of every board of the catalogue, put back together.</summary>
public sealed class CatalogInverseTests
{
    private static readonly int[] Lengths = [0x800, 0x1000, 0x2000, 0x4000, 0x8000, 0xC000, 0x10000, 0x40000, 0x60000];

    public static TheoryData<string> Boards => [.. BoardCatalog.Ids];

    [Theory]
    [MemberData(nameof(Boards))]
    public void The_chips_of_every_board_are_the_regions_again(string id)
    {
        var board = BoardCatalog.Find(id)!;
        var held = from order in Enum.GetValues<WordOrder>() from length in Lengths select ComesBack(board, order, length);
        Assert.Contains(true, held.ToList());
    }

    // False where the board has no room for regions of that length.
    private static bool ComesBack(Board board, WordOrder order, int length)
    {
        var regions = board.Sites.Select(site => site.Region).Distinct().Select(name => new RegionImage(name, Random(length, name.Length), 0xFF, [])).ToImmutableArray();
        var log = new FindingLog();
        var images = new ImageSettings("", SourcePlace.None, [ImageFormat.Raw], order);
        var settings = new BoardSettings(new ManifestValue(board.Id, SourcePlace.None), default, ImmutableSortedDictionary<string, ChipSettings>.Empty);
        var chips = new ChipImageBuilder(board, settings, images, log).Build(new Rom(regions));
        foreach (var region in log.HasErrors ? [] : regions)
        {
            var back = new byte[region.Length];
            foreach (var chip in chips.Where(chip => chip.Site.Region == region.Name))
                new ChipMerger(board).PutBack(chip.Site, chip.Bytes.Span, chip.WordOrder, back);
            Assert.Equal(region.Bytes.ToArray(), back);
        }

        return !log.HasErrors;
    }

    private static byte[] Random(int length, int seed)
    {
        var bytes = new byte[length];
        new Random(seed).NextBytes(bytes);
        return bytes;
    }
}
