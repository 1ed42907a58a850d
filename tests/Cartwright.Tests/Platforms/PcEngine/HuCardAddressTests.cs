using Cartwright.Platforms.PcEngine;
using Cartwright.Roms;
using Xunit;
using static Cartwright.Tests.Platforms.PcEngine.HuCards;

namespace Cartwright.Tests.Platforms.PcEngine;

public sealed class HuCardAddressTests
{
    [Theory]
    [InlineData("00:E000", null, 0x0, 0x2000)]
    [InlineData("03:C123", null, 0x6123, 0x1EDD)]
    [InlineData("03:0123", null, 0x6123, 0x1EDD)]
    [InlineData("40:4000", null, 0x80000, 0x2000)]
    [InlineData("7F:5FFF", null, 0xFFFFF, 1)]
    [InlineData("$006123", null, 0x6123, 0x100000 - 0x6123)]
    [InlineData("20:4000", 512 * K, 0x40000, 0x2000)]
    [InlineData("40:4000", 768 * K, 0x80000, 0x2000)]
    [InlineData("1F:4000", 384 * K, 0x3E000, 0x2000)]
    [InlineData("40:4000", 384 * K, 0x40000, 0x20000)]
    [InlineData("4F:5FFF", 384 * K, 0x5FFFF, 1)]
    [InlineData("$080000", 384 * K, 0x40000, 0x20000)]
    public void Places_of_the_card(string text, int? size, long offset, long run)
    {
        var place = Locate(text, size);
        Assert.Equal(("rom", offset, run), (place.Region, place.Offset, place.Run));
    }

    [Theory]
    [InlineData("20:4000", 384 * K, "00-1F again")]
    [InlineData("50:4000", 384 * K, "40-4F again")]
    [InlineData("80:0000", null, "no card")]
    [InlineData("F8:0000", null, "RAM or a register")]
    [InlineData("$1FE000", null, "RAM or a register")]
    [InlineData("100:0000", null, "above the last")]
    [InlineData("00:10000", null, "16 bits")]
    public void Places_elsewhere(string text, int? size, string words) => Assert.Contains(words, Locate(text, size).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("3F:4000", 0x7E000)]
    [InlineData("40:4000", 0x80000)]
    [InlineData("80:4000", 0x100000)]
    [InlineData("13F:4000", 0x27E000)]
    [InlineData("$07FFFF", 0x7FFFF)]
    public void Banks_count_on_through_the_pages(string text, long offset) => Assert.Equal(offset, Locate(text, null, pages: true).Offset);

    [Theory]
    [InlineData("$080000", "name the bank")]
    [InlineData("140:0000", "above the last")]
    public void Pages_are_named_by_their_banks(string text, string words) => Assert.Contains(words, Locate(text, null, pages: true).Problem, StringComparison.Ordinal);

    // 384 KiB change where the banks lie, so nothing but a statement makes them.
    [Theory]
    [InlineData(8 * K, null, 8 * K)]
    [InlineData(20 * K, null, 32 * K)]
    [InlineData(300 * K, null, 512 * K)]
    [InlineData(600 * K, null, 768 * K)]
    [InlineData(800 * K, null, 1024 * K)]
    [InlineData(300 * K, 384 * K, 384 * K)]
    [InlineData(20 * K, 24 * K, 24 * K)]
    [InlineData(8 * K, 96 * K, 96 * K)]
    public void Sizes(int program, int? stated, int size) =>
        Assert.Equal(size, Bench(Program(program)).Size("rom", stated).Assemble().Rom.LengthOf("rom"));

    [Theory]
    [InlineData(12 * K)]
    [InlineData(320 * K)]
    [InlineData(640 * K)]
    [InlineData(2560 * K)]
    public void Sizes_no_card_has(int stated)
    {
        var bench = Bench(Program(8 * K)).Size("rom", stated);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW3004"], bench.Codes());
    }

    [Fact]
    public void A_card_with_pages_has_one_size() =>
        Assert.Equal(2560 * K, Bench(Program(8 * K)).Header("mapper", "pages").Assemble().Rom.LengthOf("rom"));

    private static AddressPlace Locate(string text, int? size, bool pages = false) =>
        ConsoleAddress.TryParse(text, out var address) ? new PcEngineAddresses(pages).Locate(address, _ => size) : throw new ArgumentException(text);
}
