using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.Nintendo64;
using Cartwright.Roms;
using Xunit;
using static Cartwright.Tests.Platforms.Nintendo64.CheckWordsTests;

namespace Cartwright.Tests.Platforms.Nintendo64;

/// <summary>Orders, recognition and addresses.</summary>
public sealed class N64ImageTests
{
    // The first word of a usual image as each order shows it: N64brew Wiki, ROM Header; the fourth order follows from the definition.
    [Theory]
    [InlineData(ImageOrder.Console, "80371240")]
    [InlineData(ImageOrder.ByteSwapped, "37804012")]
    [InlineData(ImageOrder.WordSwapped, "40123780")]
    [InlineData(ImageOrder.HalfwordSwapped, "12408037")]
    public void An_image_is_recognised_in_each_order(ImageOrder order, string digits)
    {
        var file = In(order, N64Bench.Bench().Assemble().Bytes("rom"));
        Assert.Equal(digits, Convert.ToHexString(file.AsSpan(0, 4)));
        var platform = new N64Platform();
        Assert.Equal(order, platform.OrderOf(file));
        var claim = platform.Recognise(file)!;
        Assert.Equal((Certainty.Exact, order, "6102-7101"), (claim.Certainty, claim.Order, claim.Variant));
    }

    [Theory]
    [InlineData(ImageOrder.Console)]
    [InlineData(ImageOrder.ByteSwapped)]
    [InlineData(ImageOrder.WordSwapped)]
    [InlineData(ImageOrder.HalfwordSwapped)]
    public void With_other_bus_times_the_boot_code_shows_the_order(ImageOrder order)
    {
        var file = In(order, N64Bench.Bench(Chip("6105")).Header("pulseWidth", "0xFF").Assemble().Bytes("rom"));
        Assert.Equal(order, new N64Platform().OrderOf(file));
        Assert.Equal("6105-7105", new N64Platform().Recognise(file)!.Variant);

        var code = In(order, N64Bench.Forged(Chip("6103")));
        Assert.Equal(order, new N64Platform().OrderOf(code));
    }

    [Fact]
    public void An_open_image_is_recognised_without_words_or_size()
    {
        var claim = N64Bench.OpenPlatform.Recognise(N64Bench.Open().Assemble().Bytes("rom"))!;
        Assert.Equal((Certainty.Exact, "open"), (claim.Certainty, claim.Variant));
    }

    [Fact]
    public void An_image_whose_boot_code_no_chip_lets_start_is_of_none() =>
        Assert.Equal("none", new N64Platform().Recognise(N64Bench.Open().Assemble().Bytes("rom"))!.Variant);

    [Fact]
    public void Other_bytes_are_not_recognised()
    {
        var platform = new N64Platform();
        byte[] start = [0x80, 0x37, 0x12, 0x40];
        Assert.Null(platform.Recognise(start));
        Assert.Null(platform.Recognise([.. start, .. new byte[0xFFB]]));
        Assert.Null(platform.Recognise(TestBytes.All(0x80, 0x2000)));
        for (var length = 0; length < 0x50; length++)
            Assert.Equal(ImageOrder.Console, platform.OrderOf(TestBytes.L(length)));

        Assert.Equal(ImageOrder.Console, platform.OrderOf(TestBytes.L(BootCode.Length)));
        Assert.Equal(ImageOrder.Console, platform.OrderOf(TestBytes.L(0x3001)));
    }

    [Theory]
    [InlineData("$B0000000", 0)]
    [InlineData("$B0001000", 0x1000)]
    [InlineData("$90001000", 0x1000)]
    [InlineData("$10001000", 0x1000)]
    [InlineData("$BFBFFFFF", 0xFBFFFFF)]
    public void Addresses_of_the_ROM(string text, long offset)
    {
        var place = Locate(text);
        Assert.Equal(offset, place.Offset);
        Assert.Equal(N64Addresses.Window - offset, place.Run);
    }

    [Theory]
    [InlineData("$80000400", "offset` 0x1000")]
    [InlineData("$A0000400", "RAM")]
    [InlineData("$A4000040", "registers")]
    [InlineData("$A8000000", "save memory")]
    [InlineData("$BFC00000", "beyond")]
    [InlineData("$C0000000", "beyond")]
    [InlineData("01:0000", "no banks")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    [Fact]
    public void The_boot_code_has_a_place_by_name()
    {
        foreach (var layout in new N64Platform().Layouts)
            Assert.Equal(("bootCode", 0x40L, 4032L), (layout.Places[0].Name, layout.Places[0].Offset, layout.Places[0].Length));
    }

    private static byte[] In(ImageOrder order, ReadOnlySpan<byte> console)
    {
        var file = new byte[console.Length];
        ImageOrders.FromConsole(order, console, file);
        return file;
    }

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new N64Addresses().Locate(address, _ => null) : throw new ArgumentException(text);
}
