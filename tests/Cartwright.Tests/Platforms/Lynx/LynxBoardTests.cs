using Cartwright.Ordering;
using Cartwright.Platforms.Lynx;
using Cartwright.Roms;
using Cartwright.Tests.Boards;
using Xunit;
using static Cartwright.Tests.Platforms.Lynx.LynxCarts;

namespace Cartwright.Tests.Platforms.Lynx;

public sealed class LynxBoardTests
{
    // out[b * S2 + i] = in[b * S1 + i mod S1] (Lynx cartridge port pinouts).
    [Theory]
    [InlineData("lynx-blocks-512", 128 * K, 512)]
    [InlineData("lynx-blocks-1024", 128 * K, 1024)]
    [InlineData("lynx-blocks-1024", 256 * K, 1024)]
    [InlineData("lynx-blocks-2048", 128 * K, 2048)]
    [InlineData("lynx-blocks-2048", 256 * K, 2048)]
    [InlineData("lynx-blocks-2048", 512 * K, 2048)]
    [InlineData("lynx-banked-2048", 128 * K, 2048)]
    [InlineData("lynx-banked-2048", 512 * K, 2048)]
    public void A_block_begins_where_the_boards_lines_find_it(string board, int size, int step)
    {
        var rom = TestBytes.L(size);
        var chip = Chip(board, rom, 1024 * K);
        var own = size / 256;
        for (var a = 0; a < chip.Length; a++)
        {
            var within = a % (256 * step);
            Assert.Equal(rom[(within / step * own) + (within % step % own)], chip[a]);
        }

        var back = new byte[size];
        BlockSpread.Take(chip.AsSpan(0, 256 * step), 256, back);
        Assert.Equal(rom, back);
    }

    [Fact]
    public void Two_banks_lie_one_behind_the_other() => Assert.Equal(TestBytes.L(1024 * K), Chip("lynx-banked-2048", TestBytes.L(1024 * K), 1024 * K));

    [Theory]
    [InlineData("lynx-blocks-512", 256 * K)]
    [InlineData("lynx-blocks-1024", 512 * K)]
    [InlineData("lynx-blocks-2048", 1024 * K)]
    public void A_board_of_smaller_blocks_has_no_room(string board, int size)
    {
        var bench = new BoardBench($"\"use\": \"{board}\"");
        bench.Chips(BoardBench.Region(TestBytes.L(size)));
        Assert.Contains("CW5005", bench.Codes);
    }

    [Theory]
    [InlineData("00:0000", 512, null, 0, 0x200)]
    [InlineData("12:0034", 512, null, 0x2434, 0x1CC)]
    [InlineData("12:0034", null, 256 * K, 0x4834, 0x3CC)]
    [InlineData("FF:07FF", 2048, null, 0x7FFFF, 1)]
    [InlineData("1FF:0000", 2048, null, 0xFF800, 0x800)]
    public void Places_are_a_block_and_an_offset(string text, int? block, int? size, long offset, long run)
    {
        var place = Locate(text, block, size);
        Assert.Equal((offset, run), (place.Offset, place.Run));
    }

    [Theory]
    [InlineData("$0400", 512, null, "block by block")]
    [InlineData("01:0000", null, null, "depends on its size")]
    [InlineData("100:0000", 512, null, "last block is FF")]
    [InlineData("200:0000", 2048, null, "last block is 1FF")]
    [InlineData("01:0200", 512, null, "last offset is 01FF")]
    public void Places_elsewhere(string text, int? block, int? size, string words) => Assert.Contains(words, Locate(text, block, size).Problem, StringComparison.Ordinal);

    private static byte[] Chip(string board, byte[] rom, int capacity)
    {
        var bench = new BoardBench($$"""
            "use": "{{board}}", "chips": { "U1": { "part": "own", "capacity": {{capacity}} } }
            """);
        return Assert.Single(bench.Chips(BoardBench.Region(rom))).Bytes.ToArray();
    }

    private static AddressPlace Locate(string text, int? block, int? size) =>
        ConsoleAddress.TryParse(text, out var address) ? new LynxAddresses(block).Locate(address, _ => size) : throw new ArgumentException(text);
}
