namespace Cartwright.Ordering;

/// <summary>
/// Spreads the blocks of an image through larger ones, for boards that select a block by address lines of its own: each block
/// is repeated through its share, so that the lines inside it that the program does not use may have any level.
/// </summary>
public static class BlockSpread
{
    /// <summary>Spreads an image.</summary>
    /// <param name="image">The image; its length is a multiple of the number of blocks.</param>
    /// <param name="blocks">How many blocks it has.</param>
    /// <param name="spread">Receives it; a multiple of the number of blocks, no shorter than the image and apart from it.</param>
    public static void Fill(ReadOnlySpan<byte> image, int blocks, Span<byte> spread)
    {
        SpanGuard.RequireMultiple(image, blocks);
        SpanGuard.RequireMultiple(spread, blocks);
        _ = SpanGuard.RequireRoom(spread, image.Length);
        SpanGuard.RequireApart(image, spread);
        var (size, share) = (image.Length / blocks, spread.Length / blocks);
        for (var block = 0; block < blocks; block++)
        {
            var place = spread.Slice(block * share, share);
            for (var at = 0; at < share && size > 0; at += size)
            {
                var count = Math.Min(size, share - at);
                image.Slice(block * size, count).CopyTo(place[at..]);
            }
        }
    }

    /// <summary>The inverse of <see cref="Fill"/>.</summary>
    /// <param name="spread">The image with its blocks spread.</param>
    /// <param name="blocks">How many blocks it has.</param>
    /// <param name="image">Receives the image; its length is the image's.</param>
    public static void Take(ReadOnlySpan<byte> spread, int blocks, Span<byte> image)
    {
        var (size, share) = (image.Length / blocks, spread.Length / blocks);
        for (var block = 0; block < blocks; block++)
        {
            spread.Slice(block * share, size).CopyTo(image[(block * size)..]);
        }
    }
}
