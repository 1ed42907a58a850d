using System.Collections.Immutable;
using System.IO.Hashing;
using System.Runtime.InteropServices;
using Cartwright.Findings;
using Cartwright.Ordering;
using Cartwright.Platforms;

namespace Cartwright.Inspection;

/// <summary>Finds how chips make up an image nobody has: they are joined in every way, and what a platform knows by its marks and checksums is kept.</summary>
/// <param name="opener">Reads images.</param>
/// <param name="named">The platform the user names; null for any.</param>
public sealed class RecognisedArrangement(ImageOpener opener, Platform? named)
{
    /// <summary>The ways that give the surest images, one for each different image, the plainest way to it.</summary>
    /// <param name="chips">The contents of the chips.</param>
    public ImmutableArray<(ChipArrangement Way, OpenedImage Image)> Find(ImmutableArray<byte[]> chips)
    {
        var seen = new Dictionary<UInt128, (ChipArrangement Way, OpenedImage Image)>();
        foreach (var way in Ways(chips))
        {
            if (opener.Open("", way.Apply(chips), null, new FindingLog()) is { Found.Claim: { Certainty: > Certainty.Candidate, PrefixLength: 0 } claim } image
                && (named is null || image.Found.Platform == named)
                && Told(way, claim.Order) is { } told)
            {
                ref var plainest = ref CollectionsMarshal.GetValueRefOrAddDefault(seen, XxHash128.HashToUInt128(image.Cart.Rom.Regions[0].Bytes.Span), out var known);
                plainest = known && plainest.Way.Steps <= told.Steps ? plainest : (told, image);
            }
        }

        var best = seen.Values.Select(static row => Rank(row.Image)).DefaultIfEmpty().Max();
        return [.. seen.Values.Where(row => Rank(row.Image) == best)];
    }

    // A platform that knows an image in another order has found one more step of the way; two orders on top of each other are no way of a board.
    private static ChipArrangement? Told(ChipArrangement way, ImageOrder order) =>
        order == ImageOrder.Console ? way : way.Order == ImageOrder.Console ? way with { Order = order } : null;

    private static (Certainty Certainty, int Right, int Score) Rank(OpenedImage image) =>
        (image.Found.Claim.Certainty, image.Cart.Headers.SelectMany(static header => header.Checksums).Sum(static entry => entry.Right ? 1 : -1), image.Found.Claim.Score);

    private static IEnumerable<ChipArrangement> Ways(ImmutableArray<byte[]> chips)
    {
        var alike = chips.All(chip => chip.Length == chips[0].Length);
        var joins = alike ? ChipJoins.For(chips.Length, chips[0].Length) : [ChipJoin.InSequence];
        bool[] both = chips.All(static chip => chip.Length % 2 == 0) ? [false, true] : [false];
        return
            from order in Permutations([.. Enumerable.Range(0, chips.Length)])
            from joining in joins
            from exchanged in both
            from reversed in (bool[])[false, true]
            from swapped in both
            select new ChipArrangement(order, joining, exchanged, reversed, swapped ? ImageOrder.ByteSwapped : ImageOrder.Console);
    }

    private static IEnumerable<ImmutableArray<int>> Permutations(ImmutableArray<int> chips) =>
        chips.Length <= 1 ? [chips] : chips.SelectMany(first => Permutations(chips.Remove(first)).Select(rest => rest.Insert(0, first)));
}
