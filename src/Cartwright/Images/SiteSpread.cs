using Cartwright.Boards;
using Cartwright.Ordering;

namespace Cartwright.Images;

/// <summary>The slice of a region as a site's lines address it, where they leave gaps between its parts.</summary>
internal static class SiteSpread
{
    /// <summary>Whether the slice can be divided into the site's blocks.</summary>
    public static bool Divides(Site site, int length) => site.Blocks is not { } blocks || length % blocks == 0;

    /// <summary>The slice with each part where the site's lines find it; the same bytes where there are no gaps.</summary>
    public static ReadOnlyMemory<byte> Of(Site site, ReadOnlyMemory<byte> slice)
    {
        if (site.RestAt is { } at && RestPlacement.Length(slice.Length, (int)at) is var length && length > slice.Length)
        {
            var placed = new byte[length];
            RestPlacement.Place(slice.Span, (int)at, placed);
            return placed;
        }

        if (site is { Blocks: { } blocks, BlockStep: { } step } && slice.Length < blocks * step)
        {
            var spread = new byte[blocks * step];
            BlockSpread.Fill(slice.Span, blocks, spread);
            return spread;
        }

        return slice;
    }

    /// <summary>The slice again, out of what <see cref="Of"/> made of it.</summary>
    public static void Take(Site site, ReadOnlySpan<byte> spread, Span<byte> slice)
    {
        if (site.RestAt is { } at)
        {
            RestPlacement.Take(spread, (int)at, slice);
        }
        else if (site is { Blocks: { } blocks, BlockStep: { } step } && slice.Length < blocks * step)
        {
            BlockSpread.Take(spread, blocks, slice);
        }
        else
        {
            spread[..slice.Length].CopyTo(slice);
        }
    }
}
