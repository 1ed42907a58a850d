using System.Globalization;
using System.IO.Hashing;
using System.Numerics;
using System.Text;
using Cartwright.Headers;
using Cartwright.ReadBacks;
using Cartwright.TestImages;
using Xunit;

namespace Cartwright.Tests.TestImages;

/// <summary>What makes each kind what it is.</summary>
public sealed class TestImageContentTests
{
    [Fact]
    public void Each_line_of_the_ruler_says_its_own_address()
    {
        var image = RulerImage.Make("U12", 1 << 20);
        for (var at = 0; at < image.Length; at += 16)
        {
            var line = Encoding.ASCII.GetString(image, at, 16);
            Assert.Equal("12 ", line[..3]);
            Assert.Equal(at, int.Parse(line[3..11].Replace(":", "", StringComparison.Ordinal), NumberStyles.HexNumber));
            Assert.Equal(Crc32.HashToUInt32(image.AsSpan(at, 11)) & 0xFFFF, uint.Parse(line[12..], NumberStyles.HexNumber));
        }
    }

    [Fact]
    public void The_ruler_goes_on_to_the_end_of_the_largest_chip() =>
        Assert.StartsWith("U1 3FF:FFF0 ", Encoding.ASCII.GetString(RulerImage.Make("U1", 64 << 20).AsSpan()[^16..]), StringComparison.Ordinal);

    [Fact]
    public void Each_bank_says_its_number_three_times()
    {
        var image = BankImage.Make(8 * 4096, 4096);
        foreach (var (bank, number) in image.Chunk(4096).Select((bytes, index) => (bytes, index)))
        {
            var tag = $"BANK 000{number}/0008  ";
            Assert.Equal([tag, tag, tag], new[] { 0, 2048, 4080 }.Select(at => Encoding.ASCII.GetString(bank, at, 16)));
            Assert.All(bank[16..2048], value => Assert.Equal(number, value));
        }
    }

    [Fact]
    public void The_order_card_shows_its_words_as_the_bus_carries_them()
    {
        Assert.Equal([0x01, 0x23, 0x45, 0x67, 0x89, 0xAB, 0xCD, 0xEF, 0x01], OrderImage.Make(9, 16, ByteOrder.BigEndian));
        Assert.Equal([0x23, 0x01, 0x67, 0x45, 0xAB, 0x89, 0xEF, 0xCD, 0x23], OrderImage.Make(9, 16, ByteOrder.LittleEndian));
        Assert.Equal([0x01, 0x23, 0x45, 0x67], OrderImage.Make(4, 8, ByteOrder.LittleEndian));
    }

    [Fact]
    public void Every_block_of_a_power_of_two_begins_and_ends_with_a_tag_of_its_own()
    {
        var image = SizeImage.Make(1 << 20);
        for (var size = 1 << 10; size <= image.Length; size <<= 1)
        {
            var tags = image.Chunk(size).SelectMany(block => new[] { Encoding.ASCII.GetString(block, 0, 16), Encoding.ASCII.GetString(block, size - 16, 16) }).ToList();
            Assert.Equal(tags.Count, tags.Distinct(StringComparer.Ordinal).Count());
            Assert.All(tags, tag => Assert.Matches("^<[0-9A-F]{7} (FIRST|LAST ) >$", tag));
        }

        Assert.Equal("<0000400 FIRST >", Encoding.ASCII.GetString(image, 0x400, 16));
        Assert.Equal("<00007FF LAST  >", Encoding.ASCII.GetString(image, 0x7F0, 16));
    }

    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    public void The_stress_image_switches_every_line_in_restless_stretches_and_none_in_quiet_ones(int width)
    {
        var shape = new WordShape(width, HighFirst: false);
        var image = StressImage.Make(64 << 10, shape);
        Assert.All(image, value => Assert.True(value is 0 or 0xFF));
        Assert.All(image.Chunk(shape.Bytes), word => Assert.Single(word.Distinct()));
        var rising = 0;
        for (var word = 1; word < image.Length / shape.Bytes; word++)
        {
            var switches = image[word * shape.Bytes] != image[(word - 1) * shape.Bytes];
            var begins = StressImage.IsRestless(word) != StressImage.IsRestless(word - 1);
            Assert.True(begins || switches == StressImage.IsRestless(word), $"word {word}");
            Assert.True(switches || !BitOperations.IsPow2(word) || word < 512, $"word {word}");
            rising += begins && image[word * shape.Bytes] == 0xFF ? 1 : 0;
        }

        Assert.InRange(rising, 32 / shape.Bytes, 224 / shape.Bytes);
    }

    [Fact]
    public void A_conflict_card_has_places_that_agree_and_places_that_do_not()
    {
        var image = ConflictImage.Make(4 * 1024, 1024);
        foreach (var (bank, number) in image.Chunk(1024).Select((bytes, index) => (bytes, index)))
        {
            Assert.All(bank[16..256], value => Assert.Equal(number, value));
            Assert.All(bank[256..512], value => Assert.Equal(0, value));
            Assert.All(bank[512..], value => Assert.Equal(0xFF, value));
        }
    }

    [Fact]
    public void Every_block_of_the_memory_image_goes_with_its_own_crc()
    {
        var image = MemoryImage.Make(8 << 10, 3);
        Assert.True(MemoryImage.IsWhole(image));
        Assert.True(MemoryImage.IsWhole(MemoryImage.Inverse(8 << 10, 3)));
        Assert.Equal(Crc32.HashToUInt32(image.AsSpan(0, 252)), BitConverter.ToUInt32(image, 252));
        image[4017] ^= 4;
        Assert.False(MemoryImage.IsWhole(image));
        Assert.False(MemoryImage.IsWhole(image.AsSpan(0, 255)));
    }

    [Fact]
    public void The_memory_image_and_its_inverse_hold_every_cell_at_both_levels() =>
        Assert.All(MemoryImage.Make(4096, 1).Zip(MemoryImage.Inverse(4096, 1)), pair => Assert.Equal(0xFF, pair.First ^ pair.Second));

    [Fact]
    public void Another_seed_gives_other_bytes()
    {
        Assert.NotEqual(MemoryImage.Make(4096, 1), MemoryImage.Make(4096, 2));
        Assert.NotEqual(SignatureImage.Make(4096, new WordShape(8, HighFirst: false), 1), SignatureImage.Make(4096, new WordShape(8, HighFirst: false), 2));
    }
}
