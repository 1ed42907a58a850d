using System.Numerics;
using Cartwright.Boards;
using Cartwright.Manifests;
using Cartwright.Ordering;

namespace Cartwright.Images;

/// <summary>Puts chips back together to the region they were cut from: the way back of <see cref="ChipImageBuilder"/>.</summary>
/// <param name="board">The board.</param>
public sealed class ChipMerger(Board board)
{
    /// <summary>Bytes of a chip that come from a region of a length; what a larger chip has besides is fill.</summary>
    /// <param name="site">The chip's site.</param>
    /// <param name="region">A region of the right length, whatever it holds.</param>
    /// <returns>0 where the region does not reach the site, or does not divide into its blocks.</returns>
    public static int ContentOf(Site site, ReadOnlyMemory<byte> region) =>
        site.Start < region.Length && site.Slice(region) is var own && SiteSpread.Divides(site, own.Length) ? SiteSpread.Of(site, own).Length / site.Stride : 0;

    /// <summary>Bytes a read-back of a chip must have, so that every word the bus sees is in it.</summary>
    /// <param name="site">The chip's site.</param>
    /// <param name="region">A region of the right length, whatever it holds.</param>
    public static int Needs(Site site, ReadOnlyMemory<byte> region) =>
        ContentOf(site, region) is var content && site.AddressLines.IsEmpty ? content : Math.Max(content, site.Width / 8 << (site.AddressLines.Max() + 1));

    /// <summary>Puts the bytes of one chip into its region.</summary>
    /// <param name="site">The chip's site.</param>
    /// <param name="chip">What the chip holds, at least as much as <see cref="Needs"/> says.</param>
    /// <param name="order">Order of the two bytes of a word in the file; of no meaning on an 8-bit chip.</param>
    /// <param name="region">The region; only the chip's own bytes change.</param>
    public void PutBack(Site site, ReadOnlySpan<byte> chip, WordOrder order, Memory<byte> region)
    {
        var own = site.Slice(region);
        var spread = SiteSpread.Of(site, own).ToArray();
        var content = Content(site, chip, spread.Length / site.Stride, order);
        if (site.Lane == Lane.Word)
        {
            content.CopyTo(spread, 0);
        }
        else
        {
            Lanes.Insert(content, board.ByteOf(site.Lane), site.Stride, spread);
        }

        var back = new byte[own.Length];
        SiteSpread.Take(site, spread, back);
        site.PutBack(back, region.Span);
    }

    private byte[] Content(Site site, ReadOnlySpan<byte> chip, int length, WordOrder order)
    {
        var content = Seen(site, chip, length);
        var swap = ChipImageBuilder.IsSwapped(board, site, order);
        if (site.DataLines is { } data)
        {
            new DataLineMap(data.Inverse()).Apply(content, ChipImageBuilder.HasLowByteFirst(board, swap));
        }

        if (swap)
        {
            WordSwap.Swap16(content);
        }

        return content;
    }

    // What the bus sees of the chip, in its own order of words.
    private static byte[] Seen(Site site, ReadOnlySpan<byte> chip, int length)
    {
        if (site.AddressLines.IsEmpty && site.Ties.IsEmpty)
        {
            return (site.Fill == ChipFill.Top ? Placement.TakeEnd(chip, length) : Placement.TakeStart(chip, length)).ToArray();
        }

        var whole = chip[..(1 << BitOperations.Log2((uint)chip.Length))];
        var lines = new SiteLines(site, whole.Length);
        var seen = new byte[whole.Length];
        new AddressLineMap(lines.Order.Inverse()).Apply(whole, site.Width / 8, seen);
        // Without ties a slice that is no power of two lies at the very end of a chip filled from the top.
        return site.Ties.IsEmpty && site.Fill == ChipFill.Top ? seen[^length..] : seen.AsSpan(site.Ties.IsEmpty ? 0 : lines.Starts(length)[0], length).ToArray();
    }
}
