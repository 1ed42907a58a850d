using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Ordering;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Boards;

/// <summary>Commands and sectors as a chip behind crossed lines hears them.</summary>
public sealed class InPlaceWritingTests
{
    private const int Lines = 12;

    [Property]
    public void What_is_sent_arrives_as_the_data_sheet_asks(int seed, ushort address, byte data)
    {
        var site = Site(seed);
        var writing = new InPlaceWriting(site, 1 << Lines);
        var asked = address % (1 << Lines);
        var sent = writing.Address(asked);
        Assert.Equal(asked, Enumerable.Range(0, Lines).Sum(line => ((sent >> line) & 1) << site.AddressLines[line]));
        var lines = writing.Data(data);
        Assert.Equal(data, Enumerable.Range(0, 8).Sum(line => ((lines >> line) & 1) << site.DataLines![line]));
    }

    [Property]
    public void A_sector_covers_just_the_addresses_that_reach_it(int seed, byte size, byte number)
    {
        var site = Site(seed);
        var length = 1 << (size % Lines);
        var start = number % ((1 << Lines) / length) * length;
        var covered = new InPlaceWriting(site, 1 << Lines).Sector(start, length).SelectMany(stretch => Enumerable.Range(stretch.Start, stretch.Length)).ToList();
        var reached = Enumerable.Range(0, 1 << Lines).Where(address => Enumerable.Range(0, Lines).Sum(line => ((address >> line) & 1) << site.AddressLines[line]) is var chip && chip >= start && chip < start + length);
        Assert.Equal(reached, covered.Order());
    }

    [Fact]
    public void A_sector_is_in_one_piece_while_lines_change_places_inside_or_above_it()
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { AddressLines = [1, 0, 2, 3, 5, 4] };
        Assert.Single(new InPlaceWriting(site, 64).Sector(16, 16));
        Assert.Equal(2, new InPlaceWriting(site with { AddressLines = [0, 1, 2, 4, 3, 5] }, 64).Sector(16, 16).Length);
    }

    [Fact]
    public void What_a_tied_line_forbids_is_told()
    {
        var site = new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat)
        {
            Ties = ImmutableSortedDictionary<int, LineTie>.Empty.Add(4, LineTie.Low).Add(5, LineTie.High).Add(6, LineTie.Open),
        };
        var writing = new InPlaceWriting(site, 128);
        Assert.Empty(writing.Against(0x25));
        Assert.Equal([4, 5], writing.Against(0x55));
    }

    private static Site Site(int seed)
    {
        var random = new Random(seed);
        int[] address = [.. Enumerable.Range(0, Lines)];
        int[] data = [.. Enumerable.Range(0, 8)];
        random.Shuffle(address);
        random.Shuffle(data);
        return new Site("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat) { AddressLines = [.. address], DataLines = new LineOrder(data) };
    }
}
