using Cartwright.Platforms;
using Cartwright.Platforms.ColecoVision;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.ColecoVision;

public sealed class ColecoCheckTests
{
    [Fact]
    public void No_mark() => Only("CW4370", ColecoPrograms.Bench(0, "F3C3"));

    [Theory]
    [InlineData("0070", "CW4371")]
    [InlineData("00C0", "CW4371")]
    [InlineData("2380", "CW4372")]
    [InlineData("2480", null)]
    [InlineData("FFBF", null)]
    public void Start_addresses(string start, string? code) => Only(code, ColecoPrograms.Bench(ColecoHeader.Start, start));

    [Fact]
    public void A_start_must_be_stated_or_held()
    {
        var bench = new RomBench(new ColecoPlatform()).Program("rom", 0x100, TestBytes.L(0x1000)).Header("nmi", "$8200");
        bench.TryAssemble();
        Assert.Equal(["CW4002", "CW4371"], bench.Codes());
    }

    [Theory]
    [InlineData("hex 000000", "CW4373")]
    [InlineData("hex FFFFFF", "CW4373")]
    [InlineData("$C000", "CW4374")]
    [InlineData("$1FFD", null)]
    [InlineData("$BFFF", null)]
    public void Restart_slots(string slot, string? code) => Only(code, ColecoPrograms.Bench().Header("rst28", slot));

    [Theory]
    [InlineData("000000", "CW4375")]
    [InlineData("FFFFFF", "CW4375")]
    [InlineData("C30090", null)]
    [InlineData("C300C0", "CW4376")]
    [InlineData("F5C5D5", null)]
    public void The_video_interrupt(string slot, string? code) => Only(code, ColecoPrograms.Bench(ColecoHeader.NmiSlot, slot));

    [Theory]
    [InlineData("AA55", "", "CW4377")]
    [InlineData("AA55", "LANTERN TIDE/QUILLMOOR PRESENTS/2026", null)]
    [InlineData("AA55", "LANTERN TIDE LANTERN TIDE LANTERN/QUILLMOOR SOFTWORKS /2026", null)]
    [InlineData("AA55", "LANTERN TIDE LANTERN TIDE LANTERN/QUILLMOOR SOFTWORKS  X/2026", "CW4378")]
    [InlineData("55AA", "", null)]
    public void The_title(string mark, string text, string? code) => Only(code, ColecoPrograms.Bench(0x24, Convert.ToHexString(System.Text.Encoding.ASCII.GetBytes(text)), mark));

    [Fact]
    public void A_title_without_its_screen()
    {
        var bench = ColecoPrograms.Bench().Header("titleScreen", "A/B/2026").Header("mark", "at-once");
        bench.TryAssemble();
        Assert.Equal(["CW4010"], bench.Codes());
    }

    [Fact]
    public void Bytes_that_switch_banks() => Only("CW4379", ColecoPrograms.Banked().Program("rom", 0x3FC0, [0x01]));

    [Fact]
    public void Bytes_before_those_do_not() => Only(null, ColecoPrograms.Banked().Program("rom", 0x3FBF, [0x01]));

    [Theory]
    [InlineData(0x00, "F3C3", "CW4380")]
    [InlineData(0x0A, "00C0", "CW4380")]
    [InlineData(0x0A, "00B0", null)]
    public void A_banked_cart_must_start_in_its_last_bank(int at, string digits, string? code) => Only(code, ColecoPrograms.Banked(at, digits));

    [Theory]
    [InlineData("linear", "$8000", 0)]
    [InlineData("linear", "$FFFF", 0x7FFF)]
    [InlineData("banked", "$8000", -0x4000)]
    [InlineData("banked", "$C000", 0)]
    [InlineData("banked", "03:C123", 0xC123)]
    public void Addresses(string mapper, string text, long offset) => Assert.Equal(offset, Locate(mapper, text).Offset);

    [Theory]
    [InlineData("linear", "$7000", "the console's own")]
    [InlineData("linear", "01:C000", "no banks")]
    [InlineData("banked", "01:8000", "banks are seen")]
    [InlineData("banked", "40:C000", "last one")]
    public void Addresses_elsewhere(string mapper, string text, string words) => Assert.Contains(words, Locate(mapper, text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("linear", 1, 0x2000)]
    [InlineData("linear", 0x4001, 0x6000)]
    [InlineData("linear", 32767, 0x8000)]
    [InlineData("linear", 0x8001, null)]
    [InlineData("banked", 0x8000, 0x10000)]
    [InlineData("banked", 0x18000, 0x20000)]
    [InlineData("banked", 0x100001, null)]
    public void Sizes(string mapper, long needed, int? fit) => Assert.Equal(fit, Layout(mapper).Regions[0].Sizes.Fit(needed));

    [Theory]
    [InlineData("AA55")]
    [InlineData("55AA")]
    public void A_cart_is_recognised(string mark)
    {
        var rom = ColecoPrograms.Bench(0x24, Convert.ToHexString("A/B/1983"u8), mark).Assemble().Rom();
        Assert.Equal((Certainty.Structural, "linear"), (Ask(rom)!.Certainty, Ask(rom)!.Variant));
        Assert.NotNull(Ask(rom[..0x600]));
        Assert.Null(Ask(rom[..0x100]));
        rom[ColecoHeader.Start + 1] = 0xC0;
        Assert.Null(Ask(rom));
    }

    [Fact]
    public void A_banked_cart_is_recognised() => Assert.Equal("banked", Ask(ColecoPrograms.Banked().Assemble().Rom())!.Variant);

    [Fact]
    public void Nothing_is_claimed_for_short_and_blank_files()
    {
        for (var length = 0; length < 0x140; length++)
        {
            Assert.Null(Ask(new byte[length]));
            Assert.Null(Ask(TestBytes.All(0xFF, length)));
            Assert.Null(Ask(TestBytes.All(0x55, length)));
            Assert.Null(Ask([0xAA, 0x55, .. new byte[length]]));
        }

        Assert.Null(Ask(new byte[0x20000]));
        Assert.Null(Ask(TestBytes.L(0x20001)));
    }

    private static RecognitionClaim? Ask(byte[] file) => new ColecoPlatform().Recognise(file);

    private static PlatformLayout Layout(string mapper) => new ColecoPlatform().Layouts.First(layout => layout.Variant == mapper);

    private static AddressPlace Locate(string mapper, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? Layout(mapper).Addresses.Locate(address, _ => null) : throw new ArgumentException(text);

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes().Distinct());
    }
}
