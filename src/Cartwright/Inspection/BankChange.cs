using System.Collections.Immutable;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Inspection;

/// <summary>A bank in which two images differ.</summary>
/// <param name="Region">Its region.</param>
/// <param name="Bank">The bank of the newer image.</param>
/// <param name="Changed">Bytes that differ, those that only one of the images has among them.</param>
public sealed record BankChange(string Region, BankUse Bank, int Changed)
{
    /// <summary>The banks of an image that another has otherwise.</summary>
    /// <param name="before">The earlier image.</param>
    /// <param name="after">The later one, whose banks are counted.</param>
    public static ImmutableArray<BankChange> Between(OpenedImage before, OpenedImage after) =>
        [.. after.Cart.Rom.Regions.SelectMany(region => In(before.Cart.Rom[region.Name], region, after.Cart.Layout.Addresses.BankOf(region.Name)))];

    private static IEnumerable<BankChange> In(RegionImage? before, RegionImage after, int bankSize)
    {
        foreach (var bank in BankUse.Of(after.Bytes.Span, bankSize))
        {
            var earlier = Part(before, bank);
            var changed = bank.Length - earlier.Length + Differences.Count(earlier, after.Bytes.Span.Slice(bank.Offset, earlier.Length));
            if (changed > 0)
            {
                yield return new BankChange(after.Name, bank, changed);
            }
        }
    }

    private static ReadOnlySpan<byte> Part(RegionImage? region, BankUse bank) =>
        region is null || bank.Offset >= region.Length ? [] : region.Bytes.Span[bank.Offset..Math.Min(bank.Offset + bank.Length, region.Length)];
}
