using Cartwright.Ordering;
using Cartwright.Tests.Boards;
using Xunit;
using static Cartwright.Tests.Platforms.PcEngine.HuCards;

namespace Cartwright.Tests.Platforms.PcEngine;

/// <summary>
/// Chip files of cards. Digests: computed by two independent programs from the bytes of the generator, after "HuCard pinout"
/// and the bank maps of public programs.
/// </summary>
public sealed class HuCardChipTests
{
    [Theory]
    [InlineData("pce-single-8bit", 384 * K, 1024 * K, "7416D588")]
    [InlineData("pce-384k-8bit", 384 * K, 512 * K, "DC542FA2")]
    [InlineData("pce-single-8bit", 768 * K, 1024 * K, "BE50A8A1")]
    [InlineData("pce-single-8bit", 96 * K, 128 * K, "526D362D")]
    [InlineData("pce-single-8bit", 56 * K, 64 * K, "0BB9A214")]
    public void A_chip_holds_what_its_banks_show(string board, int rom, int capacity, string digest)
    {
        var chip = Chip(board, TestBytes.L(rom), capacity);
        Assert.Equal(digest, TestBytes.Crc(chip.Bytes.Span));
    }

    // The rule of the banks itself: out[a] = img[a & 3FFFF] below 80000, else img[40000 + (a & 1FFFF)].
    [Fact]
    public void A_card_of_384_KiB_is_two_parts()
    {
        var rom = TestBytes.L(384 * K);
        var chip = Chip("pce-single-8bit", rom, 1024 * K).Bytes.Span;
        for (var a = 0; a < chip.Length; a++)
            Assert.Equal(a < 0x80000 ? rom[a & 0x3FFFF] : rom[0x40000 + (a & 0x1FFFF)], chip[a]);
    }

    // A 512 KiB read-back whose 40000-5FFFF equals 60000-7FFFF is really 384 KiB.
    [Fact]
    public void A_small_board_for_384_KiB_shows_its_rest_twice()
    {
        var chip = Chip("pce-384k-8bit", TestBytes.L(384 * K), 512 * K).Bytes.Span;
        Assert.Equal(chip[0x40000..0x60000], chip[0x60000..]);
        Assert.Equal(TestBytes.L(384 * K), chip[..0x60000]);
    }

    [Theory]
    [InlineData(8 * K, 128 * K)]
    [InlineData(24 * K, 512 * K)]
    [InlineData(256 * K, 1024 * K)]
    [InlineData(512 * K, 1024 * K)]
    public void Other_sizes_repeat_at_every_power_of_two(int rom, int capacity)
    {
        var expected = new byte[capacity];
        Mirror.Fill(TestBytes.L(rom), expected);
        Assert.Equal(expected, Chip("pce-single-8bit", TestBytes.L(rom), capacity).Bytes.ToArray());
    }

    [Fact]
    public void Four_pages_lie_behind_the_fixed_half()
    {
        var chip = Chip("pce-paged-8bit", TestBytes.L(2560 * K), 4096 * K).Bytes.Span;
        Assert.Equal(TestBytes.L(2560 * K), chip[..(2560 * K)]);
        Assert.False(chip[(2560 * K)..].ContainsAnyExcept((byte)0xFF));
    }

    [Theory]
    [InlineData(0x00, 0x00)]
    [InlineData(0x01, 0x80)]
    [InlineData(0x4C, 0x32)]
    [InlineData(0x78, 0x1E)]
    [InlineData(0xA9, 0x95)]
    [InlineData(0xD4, 0x2B)]
    [InlineData(0xE0, 0x07)]
    [InlineData(0xE1, 0x87)]
    [InlineData(0xF0, 0x0F)]
    [InlineData(0xFF, 0xFF)]
    public void Bits_turn_round(byte value, byte reversed)
    {
        Assert.Equal(reversed, BitReverse.Reverse8(value));
        Assert.Equal(reversed, Chip("pce-single-8bit-reversed", [value], 1).Bytes.Span[0]);
    }

    [Fact]
    public void A_board_for_the_other_region_has_its_chip_file_reversed_and_a_straight_one_has_not()
    {
        Assert.Equal("7F02639D", TestBytes.Crc(Taken(Chip("pce-single-8bit-reversed", TestBytes.L(384 * K), 1024 * K).Bytes.Span)));
        Assert.Equal("C092265F", TestBytes.Crc(Taken(Chip("pce-single-8bit", TestBytes.L(384 * K), 1024 * K).Bytes.Span)));
    }

    [Fact]
    public void The_two_boards_differ_in_the_order_of_bits_alone()
    {
        foreach (var rom in (int[])[24 * K, 384 * K, 1024 * K])
        {
            var straight = Chip("pce-single-8bit", TestBytes.L(rom), 1024 * K).Bytes.ToArray();
            BitReverse.Reverse8(straight);
            Assert.Equal(straight, Chip("pce-single-8bit-reversed", TestBytes.L(rom), 1024 * K).Bytes.ToArray());
        }
    }

    [Theory]
    [InlineData("pce-single-8bit", 384 * K, "SST39SF040")] // bank bit 6 would reach no pin of a 512 KiB chip
    [InlineData("pce-384k-8bit", 512 * K, "SST39SF040")]
    [InlineData("pce-single-8bit", 2560 * K, "SST39SF040")]
    public void A_board_or_chip_that_cannot_show_the_card_is_an_error(string board, int rom, string part)
    {
        var bench = new BoardBench($$"""
            "use": "{{board}}", "chips": { "U1": { "part": "{{part}}" } }
            """);
        bench.Chips(BoardBench.Region(TestBytes.L(rom)));
        Assert.True(bench.Log.HasErrors);
    }

    private static byte[] Taken(ReadOnlySpan<byte> chip)
    {
        var rom = new byte[384 * K];
        RestPlacement.Take(chip, 0x80000, rom);
        return rom;
    }
}
