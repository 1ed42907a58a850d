using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Ordering;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>What the bus sees of one chip in a read of the whole cartridge: its own bytes, in the order of the bus.</summary>
internal static class SiteView
{
    /// <summary>The chip's bytes out of a region.</summary>
    /// <param name="board">The board.</param>
    /// <param name="site">A site that holds some of the region.</param>
    /// <param name="region">The region.</param>
    public static byte[] Of(Board board, Site site, ReadOnlyMemory<byte> region)
    {
        var slice = SiteSpread.Of(site, site.Slice(region));
        if (site.Lane == Lane.Word)
        {
            return slice.ToArray();
        }

        var lane = new byte[slice.Length / site.Stride];
        Lanes.Split(slice.Span, board.ByteOf(site.Lane), site.Stride, lane);
        return lane;
    }

    /// <summary>The chip's words, as the bus has them.</summary>
    public static WordShape Shape(Board board, Site site) => new(site.Width, board.ByteOrder == ByteOrder.BigEndian);

    /// <summary>Which of the chip's bytes are in ranges of the region.</summary>
    public static ImmutableArray<ByteRange> Ranges(Board board, Site site, int length, ImmutableArray<ByteRange> ranges)
    {
        if (ranges.IsEmpty)
        {
            return [];
        }

        var marked = new byte[length];
        foreach (var range in ranges)
        {
            marked.AsSpan(range.Offset, range.Length).Fill(byte.MaxValue);
        }

        return ByteRanges.Differing(Of(board, site, new byte[length]), Of(board, site, marked));
    }
}
