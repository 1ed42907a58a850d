using System.Text;
using Cartwright.Ordering;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class LanesTests
{
    // Worked values, computed by two independent programs.
    [Fact]
    public void Both_lanes_have_the_worked_digests()
    {
        var image = TestBytes.L(0x20000);
        Assert.Equal("B9764406", TestBytes.Crc(Split(image, 0, 2)));
        Assert.Equal("D26E0F4C", TestBytes.Crc(Split(image, 1, 2)));
    }

    [Theory]
    [InlineData("SEGA MEGA DRIVE ", "SG EADIE", "EAMG RV ")]
    [InlineData("SEGA GENESIS    ", "SG EEI  ", "EAGNSS  ")]
    public void A_system_name_splits_as_its_two_chips_show_it(string bus, string upper, string lower)
    {
        var image = Encoding.ASCII.GetBytes(bus);
        Assert.Equal(upper, Encoding.ASCII.GetString(Split(image, 0, 2)));
        Assert.Equal(lower, Encoding.ASCII.GetString(Split(image, 1, 2)));
    }

    // A body whose 16 KiB blocks hold the odd bytes first, then the even ones: worked value, two independent programs.
    [Fact]
    public void Blocks_of_odd_then_even_bytes_have_the_worked_digest()
    {
        var image = TestBytes.L(0x20000);
        var body = new byte[image.Length];
        for (var block = 0; block < image.Length; block += 0x4000)
            Lanes.Split2(image.AsSpan(block, 0x4000), body.AsSpan(block + 0x2000, 0x2000), body.AsSpan(block, 0x2000));

        Assert.Equal("7C594F63", TestBytes.Crc(body));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void Every_length_and_alignment_equals_the_scalar_form(int lanes)
    {
        for (var offset = 0; offset < 8; offset++)
        {
            for (var length = 0; length <= 300; length += lanes)
            {
                var source = TestBytes.L(length + offset).AsSpan(offset);
                for (var lane = 0; lane < lanes; lane++)
                    CheckSplit(source, lane, lanes, offset);
            }
        }
    }

    [Fact]
    public void One_pass_gives_what_two_passes_give()
    {
        for (var offset = 0; offset < 8; offset++)
        {
            for (var length = 0; length <= 300; length += 2)
            {
                var source = TestBytes.L(length + offset).AsSpan(offset);
                var even = new byte[(length / 2) + offset];
                var odd = new byte[(length / 2) + offset];
                Lanes.Split2(source, even.AsSpan(offset), odd.AsSpan(offset));
                Assert.Equal(Split(source, 0, 2), even[offset..]);
                Assert.Equal(Split(source, 1, 2), odd[offset..]);

                var merged = new byte[length + offset];
                Lanes.Merge(even.AsSpan(offset), odd.AsSpan(offset), merged.AsSpan(offset));
                Assert.Equal(source, merged.AsSpan(offset));
            }
        }
    }

    [Property]
    public void Merging_two_lanes_undoes_the_split(byte[] bytes)
    {
        var image = bytes[..(bytes.Length & ~1)];
        var merged = new byte[image.Length];
        Lanes.Merge(Split(image, 0, 2), Split(image, 1, 2), merged);
        Assert.Equal(image, merged);
    }

    [Property]
    public void Merging_four_lanes_undoes_the_split(byte[] bytes)
    {
        var image = bytes[..(bytes.Length & ~3)];
        var merged = new byte[image.Length];
        Lanes.Merge(Split(image, 0, 4), Split(image, 1, 4), Split(image, 2, 4), Split(image, 3, 4), merged);
        Assert.Equal(image, merged);
    }

    [Property]
    public void Splitting_undoes_the_merge(byte[] bytes)
    {
        var even = bytes[..(bytes.Length / 2)];
        var odd = bytes[(bytes.Length / 2)..][..even.Length];
        var merged = new byte[even.Length * 2];
        Lanes.Merge(even, odd, merged);
        Assert.Equal(even, Split(merged, 0, 2));
        Assert.Equal(odd, Split(merged, 1, 2));
    }

    [Property]
    public void Splitting_in_two_twice_is_splitting_in_four(byte[] bytes)
    {
        var image = bytes[..(bytes.Length & ~3)];
        for (var lane = 0; lane < 4; lane++)
            Assert.Equal(Split(image, lane, 4), Split(Split(image, lane % 2, 2), lane / 2, 2));
    }

    [Property]
    public void Inserting_one_lane_leaves_the_others(byte[] part)
    {
        for (var lane = 0; lane < 4; lane++)
        {
            var image = TestBytes.L(part.Length * 4);
            var before = image.ToArray();
            Lanes.Insert(part, lane, 4, image);
            for (var other = 0; other < 4; other++)
                Assert.Equal(other == lane ? part : Split(before, other, 4), Split(image, other, 4));
        }
    }

    [Theory]
    [InlineData(0, 3)]
    [InlineData(0, 1)]
    [InlineData(2, 2)]
    [InlineData(-1, 2)]
    [InlineData(4, 4)]
    public void A_lane_that_is_not_there_is_refused(int lane, int lanes)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Lanes.Split(new byte[12], lane, lanes, new byte[12]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lanes.Insert(new byte[2], lane, lanes, new byte[12]));
    }

    [Fact]
    public void Wrong_lengths_are_refused()
    {
        Assert.Throws<ArgumentException>("source", () => Lanes.Split(new byte[3], 0, 2, new byte[2]));
        Assert.Throws<ArgumentException>("destination", () => Lanes.Split(new byte[4], 0, 2, new byte[1]));
        Assert.Throws<ArgumentException>("even", () => Lanes.Split2(new byte[4], new byte[1], new byte[2]));
        Assert.Throws<ArgumentException>("odd", () => Lanes.Split2(new byte[4], new byte[2], new byte[1]));
        Assert.Throws<ArgumentException>("odd", () => Lanes.Merge(new byte[2], new byte[3], new byte[9]));
        Assert.Throws<ArgumentException>("destination", () => Lanes.Merge(new byte[2], new byte[2], new byte[3]));
        Assert.Throws<ArgumentException>("destination", () => Lanes.Insert(new byte[2], 0, 2, new byte[3]));
    }

    [Fact]
    public void Spans_that_share_bytes_are_refused()
    {
        var bytes = new byte[16];
        Assert.Throws<ArgumentException>("destination", () => Lanes.Split(bytes, 0, 2, bytes));
        Assert.Throws<ArgumentException>("odd", () => Lanes.Split2(new byte[8], bytes.AsSpan(0, 4), bytes.AsSpan(3)));
        Assert.Throws<ArgumentException>("destination", () => Lanes.Merge(bytes.AsSpan(0, 4), new byte[4], bytes));
    }

    private static byte[] Split(ReadOnlySpan<byte> source, int lane, int lanes)
    {
        var part = new byte[source.Length / lanes];
        Lanes.Split(source, lane, lanes, part);
        return part;
    }

    private static void CheckSplit(ReadOnlySpan<byte> source, int lane, int lanes, int offset)
    {
        var expected = new byte[source.Length / lanes];
        var actual = new byte[expected.Length + offset];
        Lanes.SplitScalar(source, lane, lanes, expected);
        Lanes.Split(source, lane, lanes, actual.AsSpan(offset));
        Assert.Equal(expected, actual[offset..]);
        for (var i = 0; i < source.Length; i++)
        {
            if (i % lanes == lane)
                Assert.Equal(source[i], expected[i / lanes]);
        }
    }
}
