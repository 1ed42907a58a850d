using Cartwright.Headers;
using Cartwright.Platforms.GameBoy;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoy;

public sealed class GameBoyHeaderTests
{
    // Pan Docs, The Cartridge Header.
    public static TheoryData<string, byte> Types { get; } = new()
    {
        { "rom", 0x00 }, { "mbc1", 0x01 }, { "mbc1-ram", 0x02 }, { "mbc1-ram-battery", 0x03 }, { "mbc2", 0x05 }, { "mbc2-battery", 0x06 },
        { "rom-ram", 0x08 }, { "rom-ram-battery", 0x09 }, { "mmm01", 0x0B }, { "mmm01-ram", 0x0C }, { "mmm01-ram-battery", 0x0D },
        { "mbc3-timer-battery", 0x0F }, { "mbc3-timer-ram-battery", 0x10 }, { "mbc3", 0x11 }, { "mbc3-ram", 0x12 }, { "mbc3-ram-battery", 0x13 },
        { "mbc5", 0x19 }, { "mbc5-ram", 0x1A }, { "mbc5-ram-battery", 0x1B }, { "mbc5-rumble", 0x1C }, { "mbc5-rumble-ram", 0x1D },
        { "mbc5-rumble-ram-battery", 0x1E }, { "mbc6", 0x20 }, { "mbc7-sensor-rumble-ram-battery", 0x22 }, { "multicart", 0xBE }, { "latch-32k", 0xC0 },
        { "camera", 0xFC }, { "tama5", 0xFD }, { "huc3", 0xFE }, { "huc1-ram-battery", 0xFF },
    };

    [Theory]
    [MemberData(nameof(Types))]
    public void A_cartridge_type_has_its_byte(string name, byte value) => AssertByte("cartridgeType", name, 0x147, value);

    [Fact]
    public void Every_cartridge_type_is_in_the_list_above() =>
        Assert.Equal(Types.Select(row => row.Data.Item1), CartridgeTypes.All.Select(type => type.Name));

    [Theory]
    [InlineData("sgbFlag", "sgb", 0x146, 0x03)]
    [InlineData("sgbFlag", "none", 0x146, 0x00)]
    [InlineData("cgbFlag", "none", 0x143, 0x00)]
    [InlineData("cgbFlag", "compatible", 0x143, 0x80)]
    [InlineData("cgbFlag", "only", 0x143, 0xC0)]
    [InlineData("cgbFlag", "0x84", 0x143, 0x84)]
    [InlineData("saveRam", "0", 0x149, 0x00)]
    [InlineData("saveRam", "8KiB", 0x149, 0x02)]
    [InlineData("saveRam", "32KiB", 0x149, 0x03)]
    [InlineData("saveRam", "128KiB", 0x149, 0x04)]
    [InlineData("saveRam", "64KiB", 0x149, 0x05)]
    [InlineData("destination", "japan", 0x14A, 0x00)]
    [InlineData("destination", "overseas", 0x14A, 0x01)]
    [InlineData("oldLicensee", "see-new-licensee", 0x14B, 0x33)]
    [InlineData("version", "3", 0x14C, 0x03)]
    public void A_named_value_has_its_byte(string field, string text, int offset, byte value) => AssertByte(field, text, offset, value);

    // ROM size codes 00 to 08: 32 KiB shifted left by the code (Pan Docs, The Cartridge Header).
    [Theory]
    [InlineData(0, "32KiB")]
    [InlineData(1, "64KiB")]
    [InlineData(2, "128KiB")]
    [InlineData(3, "256KiB")]
    [InlineData(4, "512KiB")]
    [InlineData(5, "1MiB")]
    [InlineData(6, "2MiB")]
    [InlineData(7, "4MiB")]
    [InlineData(8, "8MiB")]
    public void The_ROM_size_is_worked_out(byte code, string text)
    {
        var cart = Programs.Bench().Size("rom", 0x8000L << code).Header("cartridgeType", code == 0 ? "rom" : "mbc5").Assemble();
        Assert.Equal(code, cart.Bytes("rom")[0x148]);
        Assert.Equal(text, cart["romSize"]);
        Assert.Equal(0x8000 << code, cart.Bytes("rom").Length);
    }

    [Fact]
    public void Sizes_fit_the_next_power_of_two()
    {
        var cart = Programs.Bench(40 << 10).Header("cartridgeType", "mbc5").Assemble();
        Assert.Equal(64 << 10, cart.Bytes("rom").Length);
        Assert.Equal(1, cart.Bytes("rom")[0x148]);
    }

    [Theory]
    [InlineData(0x4000)]
    [InlineData(0xC000)]
    [InlineData(0x1000000)]
    public void Other_sizes_are_refused(long size)
    {
        var bench = Programs.Bench().Size("rom", size);
        Assert.Null(bench.TryAssemble());
        Assert.Contains("CW3004", bench.Codes());
    }

    [Fact]
    public void Title_and_version_come_from_the_cart()
    {
        var bench = new RomBench(new GameBoyPlatform()) { Title = "LANTERN TIDE", Revision = "2" }.Program("rom", 0, Programs.Whole());
        var rom = bench.Assemble().Bytes("rom");
        Assert.Equal("LANTERN TIDE\0\0\0\0"u8, rom.Slice(0x134, 16));
        Assert.Equal(2, rom[0x14C]);
    }

    [Theory]
    [InlineData("newLicensee", "QS")]
    [InlineData("sgbFlag", "sgb")]
    public void The_old_licensee_follows_from_what_needs_it(string field, string text) =>
        Assert.Equal(0x33, Programs.Bench().Header(field, text).Assemble().Bytes("rom")[0x14B]);

    [Fact]
    public void The_old_licensee_is_0_otherwise() => Assert.Equal(0x00, Programs.Bench().Assemble().Bytes("rom")[0x14B]);

    [Fact]
    public void A_ROM_size_stated_wrong_is_an_error()
    {
        var bench = Programs.Bench().Header("romSize", "64KiB");
        bench.TryAssemble();
        Assert.Equal([HeaderFindings.StatedWrong.Code], bench.Codes());
    }

    [Fact]
    public void The_old_ROM_size_codes_read_raw()
    {
        var rom = Programs.Bench().Assemble().Bytes("rom").ToArray();
        rom[0x148] = 0x52;
        Assert.Equal("raw 0x52", GameBoyChecksumTests.Read(rom)["romSize"]);
    }

    private static void AssertByte(string field, string text, int offset, byte value)
    {
        var bench = Programs.Bench().Header(field, text);
        var cart = bench.TryAssemble()!;
        Assert.DoesNotContain(HeaderFindings.BadValue.Code, bench.Codes());
        Assert.Equal(value, cart.Bytes("rom")[offset]);
        Assert.Equal(text, cart[field]);
    }
}
