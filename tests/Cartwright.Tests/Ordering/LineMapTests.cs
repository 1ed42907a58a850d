using Cartwright.Ordering;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

/// <summary>Permutations of lines are what moving one bit after the other gives, undo themselves by their inverse, and compose.</summary>
public sealed class LineMapTests
{
    private static readonly byte[] Count16 = [.. Enumerable.Range(0, 16).Select(value => (byte)value)];

    [Property]
    public void Every_word_goes_where_each_bit_of_its_address_goes(int seed, byte lines, byte width)
    {
        var order = Random(seed, lines % 13);
        var bytes = 1 << (width % 3);
        var image = TestBytes.L(bytes << order.Count);
        var chip = new byte[image.Length];
        new AddressLineMap(order).Apply(image, bytes, chip);
        for (var address = 0; address < 1 << order.Count; address++)
        {
            var at = Enumerable.Range(0, order.Count).Sum(line => ((address >> line) & 1) << order[line]);
            Assert.Equal(image[(address * bytes)..((address + 1) * bytes)], chip[(at * bytes)..((at + 1) * bytes)]);
        }
    }

    [Property]
    public void An_address_map_and_its_inverse_give_the_image_again(int seed, byte lines)
    {
        var map = new AddressLineMap(Random(seed, lines % 14));
        var image = TestBytes.L(map.Words);
        Assert.Equal(image, Apply(map.Inverse(), Apply(map, image)));
    }

    [Property]
    public void Two_maps_in_turn_are_their_composition(int first, int second, byte lines)
    {
        var (one, two) = (new AddressLineMap(Random(first, lines % 12)), new AddressLineMap(Random(second, lines % 12)));
        var image = TestBytes.L(one.Words);
        Assert.Equal(Apply(two, Apply(one, image)), Apply(one.Then(two), image));
        Assert.Equal(two.Map(one.Map(image.Length - 1)), one.Then(two).Map(image.Length - 1));
    }

    [Property]
    public void Every_bit_goes_where_its_line_goes(int seed, bool wide, bool lowFirst, ushort[] words)
    {
        var order = Random(seed, wide ? 16 : 8);
        var map = new DataLineMap(order);
        byte[] bytes = [.. words.SelectMany(word => wide ? lowFirst ? [(byte)word, (byte)(word >> 8)] : new[] { (byte)(word >> 8), (byte)word } : [(byte)word])];
        var moved = bytes.ToArray();
        map.Apply(moved, lowFirst);
        for (var i = 0; i < words.Length; i++)
        {
            var value = wide ? words[i] : words[i] & 0xFF;
            var expected = Enumerable.Range(0, order.Count).Sum(line => ((value >> line) & 1) << order[line]);
            var found = !wide ? moved[i] : lowFirst ? moved[2 * i] | (moved[(2 * i) + 1] << 8) : (moved[2 * i] << 8) | moved[(2 * i) + 1];
            Assert.Equal(expected, found);
            Assert.Equal(expected, map.Map((ushort)value));
        }

        map.Inverse().Apply(moved, lowFirst);
        Assert.Equal(bytes, moved);
    }

    [Property]
    public void Two_data_maps_in_turn_are_their_composition(int first, int second, byte[] bytes)
    {
        var (one, two) = (new DataLineMap(Random(first, 8)), new DataLineMap(Random(second, 8)));
        var (turn, once) = (bytes.ToArray(), bytes.ToArray());
        one.Apply(turn, lowByteFirst: true);
        two.Apply(turn, lowByteFirst: true);
        one.Then(two).Apply(once, lowByteFirst: true);
        Assert.Equal(once, turn);
    }

    // Worked miniatures: a counting image of 16 words, as it reads when A0 and A1, or D0 and D1, are exchanged.
    [Fact]
    public void Exchanged_lines_of_the_miniature()
    {
        byte[] expected = [0x00, 0x02, 0x01, 0x03, 0x04, 0x06, 0x05, 0x07, 0x08, 0x0A, 0x09, 0x0B, 0x0C, 0x0E, 0x0D, 0x0F];
        Assert.Equal(expected, Apply(new AddressLineMap(LineOrder.Straight(4).Exchange(0, 1)), Count16));
        var data = Count16.ToArray();
        new DataLineMap(LineOrder.Straight(8).Exchange(0, 1)).Apply(data, lowByteFirst: true);
        Assert.Equal(expected, data);
    }

    // "Even bytes first, then odd" turns the address lines round by one.
    [Fact]
    public void A_split_that_was_not_undone_is_a_turn_of_the_lines() =>
        Assert.Equal([0x00, 0x02, 0x04, 0x06, 0x08, 0x0A, 0x0C, 0x0E, 0x01, 0x03, 0x05, 0x07, 0x09, 0x0B, 0x0D, 0x0F], Apply(new AddressLineMap(new LineOrder(3, 0, 1, 2)), Count16));

    // GNU objcopy takes the even and the odd bytes of the same image.
    [Fact]
    public void The_turned_lines_are_what_objcopy_splits()
    {
        Tool.Require("objcopy");
        using var folder = new TempFolder();
        var image = TestBytes.L(0x4000);
        folder.Write("image.bin", image);
        byte[] Lane(int lane)
        {
            Tool.Succeed("objcopy", folder.Path, "-I", "binary", "-O", "binary", "-i", "2", "-b", lane.ToString(System.Globalization.CultureInfo.InvariantCulture), "image.bin", "lane.bin");
            return folder.Read("lane.bin");
        }

        Assert.Equal([.. Lane(0), .. Lane(1)], Apply(new AddressLineMap(new LineOrder([13, .. Enumerable.Range(0, 13)])), image));
    }

    [Fact]
    public void What_is_no_permutation_is_no_order()
    {
        Assert.Throws<ArgumentException>(() => new LineOrder(0, 0));
        Assert.Throws<ArgumentException>(() => new LineOrder(1, 2));
        Assert.Throws<ArgumentException>(() => new LineOrder(-1));
        Assert.Throws<ArgumentException>(() => new LineOrder([.. Enumerable.Range(0, 33)]));
        Assert.Throws<ArgumentException>(() => LineOrder.Straight(2).Then(LineOrder.Straight(3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DataLineMap(LineOrder.Straight(9)));
        Assert.Throws<ArgumentException>(() => new AddressLineMap(LineOrder.Straight(3)).Apply(new byte[7], 1, new byte[8]));
    }

    private static LineOrder Random(int seed, int count)
    {
        int[] lines = [.. Enumerable.Range(0, count)];
        new Random(seed).Shuffle(lines);
        return new LineOrder(lines);
    }

    private static byte[] Apply(AddressLineMap map, byte[] image)
    {
        var chip = new byte[image.Length];
        map.Apply(image, 1, chip);
        return chip;
    }
}
