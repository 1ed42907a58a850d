using System.Collections.Immutable;

namespace Cartwright.Boards;

/// <summary>What has to be said on the board's side for a chip to hear what its data sheet asks: commands go through the same crossed lines as everything else.</summary>
/// <param name="site">The site.</param>
/// <param name="capacity">Bytes of the chip, a power of two.</param>
public sealed class InPlaceWriting(Site site, int capacity)
{
    private readonly SiteLines _lines = new(site, capacity);

    /// <summary>The address on the board for one of the chip, in words of the chip.</summary>
    /// <param name="address">The chip's address.</param>
    public int Address(int address) => (int)_lines.Order.Inverse().Map((uint)address);

    /// <summary>The chip's lines that are tied to another level than an address asks for: the board cannot say it.</summary>
    /// <param name="address">The chip's address, in words.</param>
    public ImmutableArray<int> Against(int address) =>
        [.. site.Ties.Where(tie => tie.Value != LineTie.Open && (tie.Value == LineTie.High) != (((address >> tie.Key) & 1) == 1)).Select(static tie => tie.Key)];

    /// <summary>The data on the board's lane for data of the chip.</summary>
    /// <param name="data">The chip's data.</param>
    public ushort Data(ushort data) => site.DataLines is { } order ? (ushort)order.Inverse().Map(data) : data;

    /// <summary>The stretches of the board's addresses, in words of the chip, that an erase sector covers: several where a line above the sector's is exchanged with one inside it.</summary>
    /// <param name="start">First word of the sector on the chip, a multiple of its length.</param>
    /// <param name="length">Words of the sector, a power of two.</param>
    public ImmutableArray<(int Start, int Length)> Sector(int start, int length)
    {
        var inside = int.Log2(length);
        // Lines of the board that move within the sector; below the first that does not, addresses run on.
        ImmutableArray<int> moving = [.. Enumerable.Range(0, _lines.Count).Where(line => _lines.Order[line] < inside)];
        var run = moving.TakeWhile(static (line, index) => line == index).Count();
        var first = Address(start);
        var stretches = ImmutableArray.CreateBuilder<(int Start, int Length)>(1 << (moving.Length - run));
        for (var i = 0; i < 1 << (moving.Length - run); i++)
        {
            var at = first;
            for (var bit = run; bit < moving.Length; bit++)
            {
                at |= ((i >> (bit - run)) & 1) << moving[bit];
            }

            stretches.Add((at, 1 << run));
        }

        return stretches.ToImmutable();
    }
}
