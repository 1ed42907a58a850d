using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Ordering;

namespace Cartwright.Boards;

/// <summary>
/// How the address lines of a site meet a chip of a size. Lines are counted in words of the chip. Behind the lines the bus drives, the chip's
/// remaining lines are counted in their own order, as if the bus had that many more lines: each is tied, open, or left to the site's fill.
/// </summary>
public sealed class SiteLines
{
    private readonly Site _site;
    private readonly int _bytesAWord;

    /// <summary>The lines of a site and a chip.</summary>
    /// <param name="site">The site.</param>
    /// <param name="capacity">Bytes of the chip, a power of two.</param>
    public SiteLines(Site site, int capacity)
    {
        _site = site;
        _bytesAWord = site.Width / 8;
        Count = BitOperations.Log2((uint)Math.Max(1, capacity / _bytesAWord));
        Order = Whole(site.AddressLines, Count);
    }

    /// <summary>Address lines of the chip.</summary>
    public int Count { get; }

    /// <summary>For each line of the bus, and then for each that only the chip has, the chip's line.</summary>
    public LineOrder Order { get; }

    /// <summary>Whether all lines run straight, so that a chip hears the commands of its data sheet as they stand.</summary>
    /// <param name="site">The site.</param>
    public static bool IsStraight(Site site) => site.DataLines is null && site.AddressLines.IsEmpty && site.Ties.IsEmpty;

    /// <summary>Whether a chip of a size has every line the site names.</summary>
    /// <param name="site">The site.</param>
    /// <param name="capacity">Bytes of the chip.</param>
    public static bool Fit(Site site, int capacity) =>
        int.IsPow2(capacity) && site.AddressLines.All(line => line < BitOperations.Log2((uint)Math.Max(1, capacity / (site.Width / 8))));

    /// <summary>Where on the chip, in bytes as the bus counts them, a slice lies: in one place, or in several that an undriven line may select.</summary>
    /// <param name="length">Bytes of the slice.</param>
    public ImmutableArray<int> Starts(int length)
    {
        var driven = DrivenBy(length);
        var first = 0;
        ImmutableArray<int> starts = [0];
        for (var line = driven; line < Count; line++)
        {
            var bytes = _bytesAWord << line;
            switch (TieOf(line))
            {
                case LineTie.High:
                    first += bytes;
                    break;
                case LineTie.Open:
                    starts = starts.AddRange(starts.Select(start => start + bytes));
                    break;
                default:
                    break;
            }
        }

        return [.. starts.Select(start => start + first)];
    }

    /// <summary>Lines of the bus that a slice needs.</summary>
    /// <param name="length">Bytes of the slice.</param>
    public int DrivenBy(int length) => BitOperations.Log2(BitOperations.RoundUpToPowerOf2((uint)Math.Max(1, (length + _bytesAWord - 1) / _bytesAWord)));

    // A repeated slice is right whatever the line does.
    private LineTie TieOf(int line) => _site.Ties.TryGetValue(Order[line], out var tie) ? tie : _site.Fill switch
    {
        ChipFill.Erased => LineTie.Low,
        ChipFill.Top => LineTie.High,
        _ => LineTie.Open,
    };

    private static LineOrder Whole(ImmutableArray<int> met, int count) => new([.. met, .. Enumerable.Range(0, count).Except(met)]);
}
