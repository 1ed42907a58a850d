using System.Text;
using Cartwright.Platforms;
using Cartwright.Platforms.NeoGeoPocket;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Platforms.NeoGeoPocket;

/// <summary>Blocks, ids and texts. Source: NGPC specification text (devrs.com); flash block table of a public driver source (address not kept).</summary>
public sealed class PocketBlockTests
{
    private const int K = 1 << 10;

    [Theory]
    [InlineData(512 * K, 7, 0x70000)]
    [InlineData(1024 * K, 15, 0xF0000)]
    [InlineData(2048 * K, 31, 0x1F0000)]
    public void A_chip_has_equal_blocks_and_a_tail_of_small_ones(int size, int uniform, int tail)
    {
        var blocks = PocketBlocks.Of(size);
        Assert.Equal(Enumerable.Range(0, uniform).Select(index => new FlashBlock(index << 16, 64 * K)), blocks[..uniform]);
        Assert.Equal([new(tail, 32 * K), new(tail + 0x8000, 8 * K), new(tail + 0xA000, 8 * K), new(tail + 0xC000, 16 * K)], blocks[uniform..]);
    }

    [Fact]
    public void Two_chips_have_a_tail_each()
    {
        var one = PocketBlocks.Of(2048 * K);
        var two = PocketBlocks.Of(4096 * K);
        Assert.Equal(one, two[..one.Length]);
        Assert.Equal(one.Select(block => block with { Offset = block.Offset + (2048 * K) }), two[one.Length..]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0x1000)]
    [InlineData(0x18000)]
    public void An_unfinished_image_is_blocks_without_gaps(int size)
    {
        var end = 0;
        foreach (var block in PocketBlocks.Of(size))
        {
            Assert.Equal(end, block.Offset);
            end += block.Length;
        }

        Assert.Equal(size, end);
    }

    [Fact]
    public void A_block_is_blank_when_every_byte_is_erased()
    {
        var rom = TestBytes.L(512 * K);
        Assert.Empty(PocketBlocks.Blank(rom));
        rom.AsSpan(0x78000, 0x4000).Fill(0xFF);
        Assert.Equal([new(0x78000, 8 * K), new(0x7A000, 8 * K)], PocketBlocks.Blank(rom));
        rom[0x79FFF] = 0xFE;
        Assert.Equal([new(0x7A000, 8 * K)], PocketBlocks.Blank(rom));
    }

    [Fact]
    public void A_ROM_without_a_blank_block_is_told()
    {
        AssertOnly("CW4434", Bench(0x80000 - 0x40));
        AssertOnly(null, Bench(0x7C000 - 0x40));
        AssertOnly(null, Bench(0x80000 - 0x40).Size("rom", 1024 * K));
    }

    [Theory]
    [InlineData("0x1234", null)]
    [InlineData("0x0000", null)]
    [InlineData("0x12A4", "CW4435")]
    [InlineData("0xB234", "CW4435")]
    public void A_software_id_has_decimal_digits(string id, string? code) => AssertOnly(code, Bench(0x1000).Header("softwareId", id));

    [Theory]
    [InlineData("licence", "COPYRIGHT BY SNK CORPORATION", 0x00, (byte)'C')]
    [InlineData("entry", "0x00200140", 0x1D, 0x01)]
    [InlineData("softwareId", "0x1234", 0x20, 0x34)]
    [InlineData("version", "7", 0x22, 0x07)]
    [InlineData("console", "mono", 0x23, 0x00)]
    [InlineData("console", "color", 0x23, 0x10)]
    [InlineData("title", "TIDE", 0x28, 0x20)]
    public void Fields_stand_at_their_places(string field, string value, int offset, byte expected)
    {
        var bench = Bench(0x1000).Header(field, value);
        Assert.Equal(expected, bench.Assemble().Bytes("rom")[offset]);
        Assert.Empty(bench.Codes());
    }

    // Sizes of the flash chips, and two of the largest.
    [Theory]
    [InlineData(256 * K, false)]
    [InlineData(512 * K, true)]
    [InlineData(1024 * K, true)]
    [InlineData(2048 * K, true)]
    [InlineData(4096 * K, true)]
    [InlineData(768 * K, false)]
    [InlineData(8192 * K, false)]
    public void Sizes_are_the_chips(int size, bool isOne)
    {
        var cart = Bench(0x1000).Size("rom", size).TryAssemble();
        Assert.Equal(isOne, cart is not null);
    }

    [Fact]
    public void A_mono_game_has_an_extension_of_its_own()
    {
        var platform = new PocketPlatform();
        Assert.Equal("ngp", platform.Extension(Bench(0x1000).Header("console", "mono").Assemble()));
        Assert.Equal("ngc", platform.Extension(Bench(0x1000).Assemble()));
    }

    // Homebrew is rarely a chip's size, and either text is taken.
    [Theory]
    [InlineData(" LICENSED BY SNK CORPORATION", true)]
    [InlineData("COPYRIGHT BY SNK CORPORATION", true)]
    [InlineData("LICENSED BY SNK CORPORATION ", false)]
    [InlineData(" licensed by snk corporation", false)]
    public void Images_are_known_by_their_text_at_any_length(string text, bool isKnown)
    {
        foreach (var length in (int[])[0x40, 10_000, 512 * K])
        {
            var image = TestBytes.L(length);
            Encoding.ASCII.GetBytes(text).CopyTo(image, 0);
            Assert.Equal(isKnown ? Certainty.Exact : null, new PocketPlatform().Recognise(image)?.Certainty);
        }
    }

    [Fact]
    public void A_general_tool_knows_it_and_its_title()
    {
        Tool.Require("file");
        using var folder = new TempFolder();
        folder.Write("lantern.ngc", Bench(0x1000).Assemble().Bytes("rom").ToArray());
        Assert.StartsWith("Neo Geo Pocket Color ROM image: \"LANTERN TIDE\"", Tool.Succeed("file", folder.Path, "--brief", "lantern.ngc"), StringComparison.Ordinal);
    }

    private static RomBench Bench(int program) => new RomBench(new PocketPlatform()).Program("rom", 0x40, TestBytes.L(program));

    private static void AssertOnly(string? code, RomBench bench)
    {
        bench.Assemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }
}
