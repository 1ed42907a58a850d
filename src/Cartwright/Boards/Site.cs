using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.Boards;

/// <summary>A place for one chip on a board, and which bytes of the ROM that chip holds.</summary>
/// <param name="Name">Name as printed on the board: U1.</param>
/// <param name="Region">The region it holds.</param>
/// <param name="Width">Data lines of the chip in use: 8 or 16.</param>
/// <param name="Lane">Which byte of the bus it drives.</param>
/// <param name="Start">First byte of its slice of the region.</param>
/// <param name="Length">Most bytes its slice can have; null for all that follow.</param>
/// <param name="Fill">How a larger chip is filled.</param>
public sealed record Site(string Name, string Region, int Width, Lane Lane, long Start, long? Length, ChipFill Fill)
{
    /// <summary>Capacity in bytes of the largest chip whose lines the site can address; null when not known.</summary>
    public long? Largest { get; init; }

    /// <summary>Bytes of the region's blocks, where the chip holds its slice of each of them, one behind the other; null where the slice is one run.</summary>
    public long? Every { get; init; }

    /// <summary>For each data line of its lane, from the lowest, the chip's line; null where they run straight.</summary>
    public LineOrder? DataLines { get; init; }

    /// <summary>For each address line of the bus, counted in words of the chip from the lowest, the chip's line; empty where they run straight. Lines that are not listed follow in their own order.</summary>
    public ImmutableArray<int> AddressLines { get; init; } = [];

    /// <summary>What address lines of the chip meet that the bus does not drive.</summary>
    public ImmutableSortedDictionary<int, LineTie> Ties { get; init; } = ImmutableSortedDictionary<int, LineTie>.Empty;

    /// <summary>Address lines of the chip that a bank latch drives.</summary>
    public ImmutableArray<int> Latched { get; init; } = [];

    /// <summary>What enables the chip; null where the board does not say.</summary>
    public SiteSelect? Select { get; init; }

    /// <summary>Nanoseconds from address or enable to data that the console leaves the chip; null where the board does not say.</summary>
    public double? AccessNs { get; init; }

    /// <summary>Nanoseconds from output enable to data that the console leaves the chip; null where the board does not say.</summary>
    public double? OutputEnableNs { get; init; }

    /// <summary>Where on the chip, in bytes of the region, a bus line selects the rest of a ROM that is no power of two; null where the ROM is in one piece.</summary>
    public long? RestAt { get; init; }

    /// <summary>How many blocks of a ROM the console selects by lines of their own; null where it has no blocks.</summary>
    public int? Blocks { get; init; }

    /// <summary>Bytes of the region from one such block to the next on the chip.</summary>
    public long? BlockStep { get; init; }

    /// <summary>What the site is for, a few words; null when not said.</summary>
    public string? Meaning { get; init; }

    /// <summary>Lanes of one byte that its bus has.</summary>
    public int LaneCount { get; init; } = 2;

    /// <summary>Bytes of the region that one byte of this chip stands for: 2 where it drives half of a 16-bit bus, 4 where it drives a quarter of a 32-bit one.</summary>
    public int Stride => Lane == Lane.Word ? 1 : LaneCount;

    /// <summary>Offset of the byte after the slice's last, in the region or, with <see cref="Every"/>, in a block of it; were the region endless.</summary>
    public long End => Length is { } length ? Start + length : long.MaxValue;

    /// <summary>Bytes of a region, or of its blocks, that go to the chip.</summary>
    /// <param name="region">The region's bytes, more than <see cref="Start"/>.</param>
    public ReadOnlyMemory<byte> Slice(ReadOnlyMemory<byte> region)
    {
        if (Every is not { } every)
        {
            return region[(int)Start..(int)Math.Min(End, region.Length)];
        }

        var parts = new byte[region.Length];
        var length = 0;
        for (var block = 0L; block + Start < region.Length; block += every)
        {
            var part = region.Span[(int)(block + Start)..(int)Math.Min(block + End, region.Length)];
            part.CopyTo(parts.AsSpan(length));
            length += part.Length;
        }

        return parts.AsMemory(0, length);
    }

    /// <summary>Puts the bytes of the chip into the region again: the way back of <see cref="Slice"/>.</summary>
    /// <param name="slice">The bytes.</param>
    /// <param name="region">The region, as long as it was.</param>
    public void PutBack(ReadOnlySpan<byte> slice, Span<byte> region)
    {
        var taken = 0;
        for (var block = 0L; block + Start < region.Length; block += Every ?? region.Length)
        {
            var place = region[(int)(block + Start)..(int)Math.Min(Math.Min(End, long.MaxValue - block) + block, region.Length)];
            slice.Slice(taken, place.Length).CopyTo(place);
            taken += place.Length;
        }
    }
}
