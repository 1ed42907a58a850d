using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.Inspection;

/// <summary>Finds how chips make up an image that is at hand: the image is parted in every way, and its parts are looked for among the chips.</summary>
/// <param name="chips">The contents of the chips.</param>
public sealed class KnownArrangement(ImmutableArray<byte[]> chips)
{
    /// <summary>Every way in which the chips give the image, the plainest first.</summary>
    /// <param name="image">The image in the console's order.</param>
    public ImmutableArray<ChipArrangement> Find(ReadOnlyMemory<byte> image)
    {
        var found = ImmutableArray.CreateBuilder<ChipArrangement>();
        if (image.Length == 0 || image.Length % chips.Length != 0 || chips.Any(chip => chip.Length != image.Length / chips.Length))
        {
            return [];
        }

        foreach (var order in Enum.GetValues<ImageOrder>().Where(order => order != ImageOrder.BitReversed && image.Length % ImageOrders.Unit(order) == 0))
        {
            var ordered = new byte[image.Length];
            ImageOrders.FromConsole(order, image.Span, ordered);
            Find(ordered, order, bitsReversed: false, found);
            BitReverse.Reverse8(ordered);
            Find(ordered, order, bitsReversed: true, found);
        }

        return [.. found.OrderBy(static way => way.Steps)];
    }

    private void Find(byte[] ordered, ImageOrder order, bool bitsReversed, ImmutableArray<ChipArrangement>.Builder found)
    {
        foreach (var join in ChipJoins.For(chips.Length, chips[0].Length))
        {
            var parts = ChipJoins.Part(join, ordered, chips.Length);
            foreach (var exchanged in chips[0].Length % 2 == 0 ? (ReadOnlySpan<bool>)[false, true] : [false])
            {
                if (Match(parts, exchanged) is { } places)
                {
                    found.Add(new ChipArrangement(places, join, exchanged, bitsReversed, order));
                }
            }
        }
    }

    private ImmutableArray<int>? Match(ImmutableArray<byte[]> parts, bool exchanged)
    {
        var places = ImmutableArray.CreateBuilder<int>();
        foreach (var part in parts)
        {
            var wanted = exchanged ? ChipArrangement.Exchanged(part) : part;
            var place = Enumerable.Range(0, chips.Length).FirstOrDefault(chip => !places.Contains(chip) && chips[chip].AsSpan().SequenceEqual(wanted), -1);
            if (place < 0)
            {
                return null;
            }

            places.Add(place);
        }

        return places.ToImmutable();
    }
}
