using Cartwright.Headers;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.VirtualBoy;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.VirtualBoy.VirtualBoyPrograms;

namespace Cartwright.Tests.Platforms.VirtualBoy;

public sealed class VirtualBoyTests
{
    [Fact]
    public void Codes_are_in_order() =>
        Assert.Equal(Enumerable.Range(4320, VirtualBoyFindings.All.Length).Select(number => $"CW{number}"), VirtualBoyFindings.All.Select(rule => rule.Code));

    // Offsets from the end: "Sacred Tech Scroll", Virtual Boy hardware documentation.
    [Fact]
    public void Header_and_handlers_lie_before_the_end()
    {
        var bench = Started().Header("version", "3").Header("video", "$07000100").Header("timer", "return");
        var rom = bench.Assemble().Bytes("rom");
        Assert.Empty(bench.Codes());
        Assert.Equal("LANTERN TIDE\0\0\0\0\0\0\0\0\0\0\0\0\0QMVLTE\u0003"u8, rom.Slice(rom.Length - 0x220, 0x20));
        Assert.Equal(Hex("00640000"), rom.Slice(rom.Length - 0x1F0, 4));
        Assert.Equal(Hex("20BC000721A000010118"), rom.Slice(rom.Length - 0x1C0, 10));
        Assert.Equal(Hex("20BC000721A000000118"), rom.Slice(rom.Length - 0x10, 10));
        Assert.Equal(TestBytes.L(0x2000), rom[..0x2000]);
        Assert.False(rom[0x2000..(rom.Length - 0x220)].ContainsAnyExcept((byte)0xFF));
    }

    [Theory]
    [InlineData(0x1C0, 0x400)]
    [InlineData(0x2000, 0x4000)]
    [InlineData(0x3DE0, 0x4000)]
    [InlineData(0x3DE2, 0x8000)]
    public void Padding_goes_between_program_and_tail(int length, int size)
    {
        var bench = new RomBench(new VirtualBoyPlatform()).Program("rom", 0, TestBytes.L(length)).Program("rom", -0x220, Tail());
        var rom = bench.Assemble().Bytes("rom");
        Assert.Empty(bench.Codes());
        Assert.Equal(size, rom.Length);
        Assert.Equal(TestBytes.L(length), rom[..length]);
        Assert.Equal(Tail(), rom[^0x220..]);
    }

    [Fact]
    public void The_repeated_chip_ends_with_the_tail()
    {
        var chip = new byte[0x80000];
        Mirror.Fill(Finished(), chip);
        Assert.Equal(Finished()[^0x220..], chip[^0x220..]);
        Assert.Equal(Finished()[..0x100], chip[..0x100]);
    }

    [Fact]
    public void A_program_with_its_tail_is_not_left_in_the_middle()
    {
        byte[] program = [.. TestBytes.L(0x2000), .. Tail()];
        var bench = new RomBench(new VirtualBoyPlatform()).Program("rom", 0, program);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW4326"], bench.Codes());
        Assert.Contains("0x002000 of the file", Assert.Single(bench.Log.ToSorted()).Message, StringComparison.Ordinal);

        bench = new RomBench(new VirtualBoyPlatform()).Program("rom", 0, Finished()).Size("rom", 2 * Size);
        bench.TryAssemble();
        Assert.Equal(["CW4326"], bench.Codes());
    }

    [Fact]
    public void A_finished_image_builds_again_without_a_finding()
    {
        var bench = new RomBench(new VirtualBoyPlatform()).Program("rom", 0, Finished());
        Assert.Equal(Finished(), bench.Assemble().Bytes("rom").ToArray());
        Assert.Empty(bench.Codes());
    }

    [Fact]
    public void A_size_between_powers_of_two_is_not_legal()
    {
        var bench = Started().Size("rom", 3 << 19);
        bench.TryAssemble();
        Assert.Equal(["CW3004"], bench.Codes());
    }

    [Theory]
    [InlineData("reset", "none", "CW4320")]
    [InlineData("reset", "00000007000000000000000000000000", "CW4321")]
    [InlineData("reset", "07000000000000000000000000000000", "CW4321")]
    [InlineData("video", "00100007000000000000000000000000", "CW4321")]
    [InlineData("reset", "$07008000", "CW4322")]
    [InlineData("reset", "$05000000", "CW4322")]
    [InlineData("reset", "20BC000721A001000118000000000000", "CW4322")]
    [InlineData("reset", "00000000000000000000000000000001", "CW4323")]
    [InlineData("timer", "$07008000", "CW4324")]
    [InlineData("timer", "7C4423DC000020BC000721A000600118", "CW4324")]
    [InlineData("timer", "64000000000000000000000000000000", "CW4325")]
    [InlineData("timer", "$05000000", null)]
    [InlineData("timer", "7C4423DC000020BC000721A000100118", null)]
    [InlineData("timer", "return", null)]
    [InlineData("reset", "$FFFF0000", null)]
    [InlineData("reserved", "0000000100", "CW4328")]
    [InlineData("makerCode", "  ", "CW4329")]
    [InlineData("title", "", "CW4329")]
    public void What_the_bytes_can_show(string field, string value, string? code)
    {
        var bench = Started().Header(field, value);
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    // The game pad's handler lies at 0xFE00 of 64 KiB: 0xFA00 back from there is 0x400, where a program is, and 0x8000 back is fill.
    [Theory]
    [InlineData(-0xFA00, null)]
    [InlineData(-0x8000, "CW4324")]
    public void A_relative_jump_is_followed(int distance, string? code)
    {
        var bench = Started().Header("gamePad", $"{Relative(distance)}{new string('0', 24)}");
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    [Fact]
    public void No_reset_code_at_all()
    {
        var bench = Bench();
        bench.TryAssemble();
        Assert.Equal(["CW4320"], bench.Codes());
    }

    // The jump that forgets that the lower half counts with its sign.
    [Fact]
    public void A_jump_that_misses_by_64_KiB()
    {
        var bench = Bench(TestBytes.L(0xD000)).Size("rom", 0x80000).Header("reset", "20BC000721A000C00118000000000000");
        bench.TryAssemble();
        Assert.Equal(["CW4322"], bench.Codes());
        Assert.Contains("$06FFC000", Assert.Single(bench.Log.ToSorted()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_header_at_the_start()
    {
        var bench = Bench([.. Tail(), .. TestBytes.L(0x1000)]).Header("reset", "$07000220");
        bench.TryAssemble();
        Assert.Equal(["CW4327"], bench.Codes());
    }

    [Property(MaxTest = 60)]
    public void What_a_reader_finds_builds_the_same_ROM(int seed)
    {
        var random = new Random(seed);
        var first = Started().Header("version", $"{random.Next(256)}").Header("title", "TIDE".PadRight(random.Next(4, 21))).Header("gamePad", $"0x{random.Next() & ~1:X8}")
            .Header("trapLow", Convert.ToHexString(TestBytes.L(16 + random.Next(50)).AsSpan()[^16..])).TryAssemble()!.Bytes("rom").ToArray();
        var again = Bench();
        foreach (var entry in HeaderReader.Read(VirtualBoyHeader.Table, first, new HeaderContext(null, null, _ => first.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(first, again.TryAssemble()!.Bytes("rom").ToArray());
    }

    [Theory]
    [InlineData("$07000000", 0)]
    [InlineData("$0707FDE0", 0x7FDE0)]
    [InlineData("$07FFFDE0", -0x220)]
    [InlineData("$FFFFFFF0", -0x10)]
    [InlineData("$07F80000", -0x80000)]
    [InlineData("$0F000010", 0x10)]
    public void Addresses_of_the_ROM(string text, long offset) => Assert.Equal(offset, Locate(text, null).Offset);

    [Theory]
    [InlineData("$07000000", 0)]
    [InlineData("$07FFFDE0", 0x7FDE0)]
    [InlineData("$07180010", 0x10)]
    public void With_a_stated_size_they_repeat(string text, long offset)
    {
        var place = Locate(text, 0x80000);
        Assert.Equal((offset, 0x80000 - offset), (place.Offset, place.Run));
    }

    [Theory]
    [InlineData("$05000000", "work RAM")]
    [InlineData("$06000000", "cartridge RAM")]
    [InlineData("$00000000", "picture")]
    [InlineData("$107000000", "32 bits")]
    [InlineData("01:0000", "no banks")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text, null).Problem, StringComparison.Ordinal);

    [Fact]
    public void Images_are_recognised_in_either_order()
    {
        var platform = new VirtualBoyPlatform();
        var rom = Finished();
        Assert.Equal((Certainty.Structural, ImageOrder.Console, 6), (platform.Recognise(rom)!.Certainty, platform.Recognise(rom)!.Order, platform.Recognise(rom)!.Score));
        Assert.NotNull(platform.Recognise([.. rom, .. rom]));
        Assert.Null(platform.Recognise(rom.AsSpan(2)));
        Assert.Equal(ImageOrder.Console, platform.OrderOf(rom));
        WordSwap.Swap16(rom);
        Assert.Equal((Certainty.Structural, ImageOrder.ByteSwapped), (platform.Recognise(rom)!.Certainty, platform.Recognise(rom)!.Order));
        Assert.Equal(ImageOrder.ByteSwapped, platform.OrderOf(rom));
        Assert.Equal(ImageOrder.Console, platform.OrderOf(rom.AsSpan(1)));
    }

    // A relative jump alone is not enough, and a blank tail is no header.
    [Fact]
    public void A_relative_jump_needs_a_header()
    {
        var platform = new VirtualBoyPlatform();
        var rom = Started().Header("reset", $"{Relative(-0xFFF0)}{new string('0', 24)}").Assemble().Bytes("rom").ToArray();
        Assert.Equal(3, platform.Recognise(rom)!.Score);
        rom.AsSpan(Size - 0x220, 0x20).Clear();
        Assert.Null(platform.Recognise(rom));
        rom.AsSpan().Clear();
        Assert.Null(platform.Recognise(rom));
    }

    private static string Relative(int distance)
    {
        var (high, low) = (0xA800 | ((distance >> 16) & 0x3FF), distance & 0xFFFF);
        return Convert.ToHexString([(byte)high, (byte)(high >> 8), (byte)low, (byte)(low >> 8)]);
    }

    private static AddressPlace Locate(string text, long? size) =>
        ConsoleAddress.TryParse(text, out var address) ? new VirtualBoyAddresses().Locate(address, _ => size) : throw new ArgumentException(text);
}
