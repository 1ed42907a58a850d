using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.TestImages;

namespace Cartwright.Cli;

/// <summary>What a user asks of <c>cartwright pattern</c>.</summary>
internal sealed record PatternRequest(
    TestImageKind Kind,
    TestImageSettings Settings,
    string? Board,
    string? Part,
    ImmutableDictionary<string, long> Sizes,
    int? Width,
    WordOrder Order)
{
    public SourcePlace Place => new(Board ?? Kind.Name);

    /// <summary>The size that was given without a region's name.</summary>
    public long? SizeOfAll => Sizes.TryGetValue("", out var size) ? size : null;

    public TestImageBuilder Builder(Board board, FindingLog log)
    {
        var fitted = SingleChip.Is(board) || Part is null ? [] : board.Sites.Select(site => new ChipSettings(site.Name, Place, new ManifestValue(Part, Place), null, null));
        var chips = ImmutableSortedDictionary.CreateRange(StringComparer.OrdinalIgnoreCase, fitted.Select(static chip => KeyValuePair.Create(chip.Site, chip)));
        return new TestImageBuilder(board, new BoardSettings(new ManifestValue(board.Id, Place), default, chips), Order, log);
    }
}
