using Cartwright.Ordering;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Ordering;

public sealed class WordSwapTests
{
    private delegate void Swap(ReadOnlySpan<byte> source, Span<byte> destination);

    // Worked value, computed by two independent programs.
    [Fact]
    public void Swapped_words_have_the_worked_digest()
    {
        var bytes = TestBytes.L(0x20000);
        WordSwap.Swap16(bytes);
        Assert.Equal("E9A75972", TestBytes.Crc(bytes));
    }

    [Theory]
    [InlineData("SEGA MEGA DRIVE ", "ESAGM GE ARDVI E")]
    [InlineData("SEGA GENESIS    ", "ESAGG NESESI    ")]
    public void A_system_name_swaps_as_a_memory_dump_shows_it(string bus, string file)
    {
        var bytes = System.Text.Encoding.ASCII.GetBytes(bus);
        WordSwap.Swap16(bytes);
        Assert.Equal(file, System.Text.Encoding.ASCII.GetString(bytes));
    }

    // The four byte orders of the first word of an N64 image.
    [Fact]
    public void Each_swap_gives_its_order_of_one_word()
    {
        byte[] word = [0x80, 0x37, 0x12, 0x40];
        Assert.Equal("37804012", Convert.ToHexString(Apply(WordSwap.Swap16, word)));
        Assert.Equal("40123780", Convert.ToHexString(Apply(WordSwap.Swap32, word)));
        Assert.Equal("12408037", Convert.ToHexString(Apply(WordSwap.HalfwordSwap, word)));
    }

    [Fact]
    public void Every_length_and_alignment_equals_the_definition()
    {
        for (var offset = 0; offset < 8; offset++)
        {
            for (var length = 0; length <= 300; length += 4)
            {
                var source = TestBytes.L(length + offset).AsSpan(offset);
                Check(WordSwap.Swap16, 1, source, offset);
                Check(WordSwap.Swap32, 3, source, offset);
                Check(WordSwap.HalfwordSwap, 2, source, offset);
            }
        }
    }

    [Fact]
    public void The_vector_form_of_the_halfword_swap_equals_the_scalar_one()
    {
        for (var length = 0; length <= 300; length += 4)
        {
            var source = TestBytes.L(length);
            Assert.Equal(Apply(WordSwap.HalfwordSwapScalar, source), Apply(WordSwap.HalfwordSwap, source));
        }
    }

    [Property]
    public void Swapping_twice_changes_nothing(byte[] bytes)
    {
        var even = bytes[..(bytes.Length & ~3)];
        Assert.Equal(even, Apply(WordSwap.Swap16, Apply(WordSwap.Swap16, even)));
        Assert.Equal(even, Apply(WordSwap.Swap32, Apply(WordSwap.Swap32, even)));
        Assert.Equal(even, Apply(WordSwap.HalfwordSwap, Apply(WordSwap.HalfwordSwap, even)));
    }

    [Property]
    public void The_halfword_swap_is_the_other_two_in_any_order(byte[] bytes)
    {
        var words = bytes[..(bytes.Length & ~3)];
        var expected = Apply(WordSwap.HalfwordSwap, words);
        Assert.Equal(expected, Apply(WordSwap.Swap16, Apply(WordSwap.Swap32, words)));
        Assert.Equal(expected, Apply(WordSwap.Swap32, Apply(WordSwap.Swap16, words)));
    }

    [Property]
    public void In_place_equals_out_of_place(byte[] bytes)
    {
        var words = bytes[..(bytes.Length & ~3)];
        Assert.Equal(Apply(WordSwap.Swap16, words), InPlace(copy => WordSwap.Swap16(copy), words));
        Assert.Equal(Apply(WordSwap.Swap32, words), InPlace(copy => WordSwap.Swap32(copy), words));
        Assert.Equal(Apply(WordSwap.HalfwordSwap, words), InPlace(copy => WordSwap.HalfwordSwap(copy), words));
    }

    [Fact]
    public void A_length_that_is_no_multiple_is_refused()
    {
        Assert.Throws<ArgumentException>("source", () => WordSwap.Swap16(new byte[3], new byte[4]));
        Assert.Throws<ArgumentException>("source", () => WordSwap.Swap32(new byte[6], new byte[8]));
        Assert.Throws<ArgumentException>("source", () => WordSwap.HalfwordSwap(new byte[6], new byte[8]));
    }

    [Fact]
    public void A_short_destination_is_refused() =>
        Assert.Throws<ArgumentException>("destination", () => WordSwap.Swap16(new byte[4], new byte[3]));

    [Fact]
    public void Spans_that_overlap_in_part_are_refused()
    {
        var bytes = new byte[12];
        Assert.Throws<ArgumentException>("destination", () => WordSwap.Swap16(bytes.AsSpan(0, 8), bytes.AsSpan(2)));
        Assert.Throws<ArgumentException>("destination", () => WordSwap.Swap32(bytes.AsSpan(1, 8), bytes.AsSpan(0)));
    }

    [Fact]
    public void A_longer_destination_keeps_its_tail()
    {
        byte[] destination = [0, 0, 0xAA, 0xBB];
        WordSwap.Swap16([1, 2], destination);
        Assert.Equal([2, 1, 0xAA, 0xBB], destination);
    }

    private static byte[] Apply(Swap swap, ReadOnlySpan<byte> source)
    {
        var destination = new byte[source.Length];
        swap(source, destination);
        return destination;
    }

    private static byte[] InPlace(Action<byte[]> swap, byte[] bytes)
    {
        var copy = bytes.ToArray();
        swap(copy);
        return copy;
    }

    private static void Check(Swap swap, int partner, ReadOnlySpan<byte> source, int offset)
    {
        var room = new byte[source.Length + offset];
        swap(source, room.AsSpan(offset));
        for (var i = 0; i < source.Length; i++)
            Assert.Equal(source[i ^ partner], room[i + offset]);
    }
}
