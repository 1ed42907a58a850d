using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.Inspection;

/// <summary>One way in which the contents of chips make up an image.</summary>
/// <param name="Sequence">The chips by their place in what was given, the one of the first byte first.</param>
/// <param name="Join">How they are joined.</param>
/// <param name="HalvesExchanged">Whether the halves of each chip are exchanged first.</param>
/// <param name="BitsReversed">Whether the bits of each byte are reversed.</param>
/// <param name="Order">The order the joined chips are in.</param>
public sealed record ChipArrangement(ImmutableArray<int> Sequence, ChipJoin Join, bool HalvesExchanged, bool BitsReversed, ImageOrder Order)
{
    /// <summary>How many things are unusual about it: of two ways to the same image the plainer one is told.</summary>
    public int Steps =>
        (Sequence.SequenceEqual(Sequence.Order()) ? 0 : 1) + (Join is ChipJoin.InSequence or ChipJoin.BytesInTurn ? 0 : 1)
        + (HalvesExchanged ? 1 : 0) + (BitsReversed ? 1 : 0) + (Order == ImageOrder.Console ? 0 : 2);

    /// <summary>Makes the image.</summary>
    /// <param name="contents">The contents of all chips, of one length unless they lie one behind the other.</param>
    public byte[] Apply(ImmutableArray<byte[]> contents)
    {
        var joined = ChipJoins.Join(Join, [.. Sequence.Select(chip => HalvesExchanged ? Exchanged(contents[chip]) : contents[chip])]);
        if (BitsReversed)
        {
            BitReverse.Reverse8(joined);
        }

        if (Order == ImageOrder.Console)
        {
            return joined;
        }

        var image = new byte[joined.Length];
        ImageOrders.ToConsole(Order, joined, image);
        return image;
    }

    /// <summary>The two halves of a chip in the other order.</summary>
    /// <param name="chip">Its content, an even number of bytes.</param>
    internal static byte[] Exchanged(byte[] chip) => [.. chip[(chip.Length / 2)..], .. chip[..(chip.Length / 2)]];
}
