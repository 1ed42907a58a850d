using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.TestImages;
using Xunit;

namespace Cartwright.Tests.TestImages;

/// <summary>Short ways to a test image.</summary>
internal static class TestBench
{
    public static TestImageSet Single(TestImageKind kind, int size, int width = 8, WordOrder order = WordOrder.Bus)
    {
        var log = new FindingLog();
        var set = Make(SingleChip.Of(width), kind, log, size, new TestImageSettings { BankSize = 1 << 10 }, order);
        Assert.Empty(log.ToSorted());
        return set!;
    }

    public static TestImageSet? Make(Board board, TestImageKind kind, FindingLog log, int size, TestImageSettings? settings = null, WordOrder order = WordOrder.Bus) =>
        new TestImageBuilder(board, Settings(board), order, log).Make(kind, settings ?? new TestImageSettings(), RegionSizes.Of(board, size, new Dictionary<string, long>(), default, log));

    public static BoardSettings Settings(Board board) => new(new ManifestValue(board.Id, default), default, ImmutableSortedDictionary<string, ChipSettings>.Empty);
}
