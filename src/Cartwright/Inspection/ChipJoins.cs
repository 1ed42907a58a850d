using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Cartwright.Ordering;

namespace Cartwright.Inspection;

/// <summary>Joins the contents of chips, and parts an image again: the exact inverse.</summary>
public static class ChipJoins
{
    private const int Pair = 2;
    private const int Word = 2;

    /// <summary>The ways so many chips of a length can be joined.</summary>
    /// <param name="chips">Number of chips, 1 to 4.</param>
    /// <param name="length">Bytes of each.</param>
    public static ImmutableArray<ChipJoin> For(int chips, int length) =>
    [
        ChipJoin.InSequence,
        .. chips is 2 or 4 ? ImmutableArray.Create(ChipJoin.BytesInTurn) : [],
        .. chips is 2 or 4 && length % Word == 0 ? ImmutableArray.Create(ChipJoin.WordsInTurn) : [],
        .. chips == 2 * Pair ? ImmutableArray.Create(ChipJoin.PairsInSequence) : [],
    ];

    /// <summary>Joins chips, of one length unless they lie one behind the other.</summary>
    /// <param name="join">How.</param>
    /// <param name="chips">The chips, the one of the first byte first.</param>
    public static byte[] Join(ChipJoin join, ImmutableArray<byte[]> chips)
    {
        if (join == ChipJoin.InSequence)
        {
            return [.. chips.SelectMany(static chip => chip)];
        }

        var image = new byte[chips.Sum(static chip => chip.Length)];
        for (var chip = 0; chip < chips.Length; chip++)
        {
            var (start, length, lane, lanes) = Place(join, chip, chips.Length, image.Length);
            var part = image.AsSpan(start, length);
            if (join == ChipJoin.WordsInTurn)
            {
                Copy(chips[chip], 0, 1, part, lane, lanes);
            }
            else
            {
                Lanes.Insert(chips[chip], lane, lanes, part);
            }
        }

        return image;
    }

    /// <summary>Parts an image as so many chips would hold it.</summary>
    /// <param name="join">How they are joined.</param>
    /// <param name="image">The image, a multiple of the number of chips, and of their words.</param>
    /// <param name="count">Number of chips.</param>
    public static ImmutableArray<byte[]> Part(ChipJoin join, ReadOnlySpan<byte> image, int count)
    {
        var chips = ImmutableArray.CreateBuilder<byte[]>(count);
        for (var chip = 0; chip < count; chip++)
        {
            var (start, length, lane, lanes) = Place(join, chip, count, image.Length);
            var content = new byte[image.Length / count];
            var part = image.Slice(start, length);
            if (lanes == 1)
            {
                part.CopyTo(content);
            }
            else if (join == ChipJoin.WordsInTurn)
            {
                Copy(part, lane, lanes, content, 0, 1);
            }
            else
            {
                Lanes.Split(part, lane, lanes, content);
            }

            chips.Add(content);
        }

        return chips.ToImmutable();
    }

    private static (int Start, int Length, int Lane, int Lanes) Place(ChipJoin join, int chip, int count, int length) => join switch
    {
        ChipJoin.InSequence => (length / count * chip, length / count, 0, 1),
        ChipJoin.PairsInSequence => (length / (count / Pair) * (chip / Pair), length / (count / Pair), chip % Pair, Pair),
        _ => (0, length, chip, count),
    };

    // Every so-many-th word of one to every so-many-th of the other, to the end of either.
    private static void Copy(ReadOnlySpan<byte> source, int from, int fromStep, Span<byte> destination, int to, int toStep)
    {
        var words = MemoryMarshal.Cast<byte, ushort>(source);
        var copies = MemoryMarshal.Cast<byte, ushort>(destination);
        for (; from < words.Length && to < copies.Length; from += fromStep, to += toStep)
        {
            copies[to] = words[from];
        }
    }
}
