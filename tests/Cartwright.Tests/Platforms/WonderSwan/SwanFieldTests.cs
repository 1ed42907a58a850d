using Cartwright.Platforms.WonderSwan;
using Xunit;

namespace Cartwright.Tests.Platforms.WonderSwan;

/// <summary>Fields and codes of the footer. Source: ROM header (ws.nesdev.org) and WonderSwan header template (datacrystal.tcrf.net).</summary>
public sealed class SwanFieldTests
{
    private const int K = 1 << 10;
    private const int M = K * K;

    [Theory]
    [InlineData(64 * K, 0x00)] // no code of its own: that of 128 KiB
    [InlineData(128 * K, 0x00)]
    [InlineData(256 * K, 0x01)]
    [InlineData(512 * K, 0x02)]
    [InlineData(1 * M, 0x03)]
    [InlineData(2 * M, 0x04)]
    [InlineData(3 * M, 0x05)]
    [InlineData(4 * M, 0x06)]
    [InlineData(6 * M, 0x07)]
    [InlineData(8 * M, 0x08)]
    [InlineData(16 * M, 0x09)]
    [InlineData(32 * M, 0x0A)]
    [InlineData(64 * M, 0x0B)]
    public void Sizes_have_codes(int size, byte code)
    {
        var bench = Bench(size);
        Assert.Equal(code, Footer(size <= 16 * M ? bench : bench.Header("mapper", "2003"))[0x0A]);
        Assert.Equal(size == 64 * K ? ["CW4418"] : [], bench.Codes());
    }

    [Theory]
    [InlineData(96 * K)]
    [InlineData(5 * M)]
    [InlineData(128 * M)]
    public void Sizes_no_cartridge_has(int size)
    {
        var bench = Bench(size);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW3004"], bench.Codes());
    }

    [Theory]
    [InlineData("entry", "F000:1234", 0x01, 0x34)]
    [InlineData("entry", "F000:1234", 0x02, 0x12)]
    [InlineData("entry", "F000:1234", 0x04, 0xF0)]
    [InlineData("maintenance", "0x80", 0x05, 0x80)]
    [InlineData("developer", "CPC", 0x06, 0x36)]
    [InlineData("developer", "BAN", 0x06, 0x01)]
    [InlineData("console", "color", 0x07, 0x01)]
    [InlineData("reserved7", "0x7F", 0x07, 0xFE)]
    [InlineData("gameId", "0x42", 0x08, 0x42)]
    [InlineData("version", "127", 0x09, 0x7F)]
    [InlineData("openEeprom", "true", 0x09, 0x80)]
    [InlineData("save", "none", 0x0B, 0x00)]
    [InlineData("save", "sram-32KiB", 0x0B, 0x02)]
    [InlineData("save", "sram-128KiB", 0x0B, 0x03)]
    [InlineData("save", "sram-256KiB", 0x0B, 0x04)]
    [InlineData("save", "sram-512KiB", 0x0B, 0x05)]
    [InlineData("save", "eeprom-128", 0x0B, 0x10)]
    [InlineData("save", "eeprom-2KiB", 0x0B, 0x20)]
    [InlineData("save", "eeprom-1KiB", 0x0B, 0x50)]
    [InlineData("orientation", "vertical", 0x0C, 0x05)]
    [InlineData("orientation", "horizontal", 0x0C, 0x04)]
    [InlineData("busWidth", "8", 0x0C, 0x00)]
    [InlineData("flags", "0x01", 0x0C, 0x0C)]
    [InlineData("mapper", "2003", 0x0D, 0x01)]
    public void Fields_stand_at_their_places(string field, string value, int offset, byte expected) =>
        Assert.Equal(expected, Footer(Bench(128 * K).Header(field, value))[offset]);

    [Theory]
    [InlineData("F000:0000", "EA000000F0")]
    [InlineData("$E000:$0010", "EA100000E0")]
    [InlineData("EA 34 12 00 F0", "EA341200F0")]
    public void Jumps_are_written_as_segment_and_offset_or_as_bytes(string text, string bytes)
    {
        var codec = new FarJumpCodec();
        var field = new byte[5];
        Assert.Null(codec.Write(text, field));
        Assert.Equal(bytes, Convert.ToHexString(field));
    }

    [Theory]
    [InlineData("")]
    [InlineData("F0000")]
    [InlineData("F000:00000")]
    [InlineData("F000")]
    [InlineData("EA000000F")]
    [InlineData("G000:0000")]
    public void Other_texts_are_no_jump(string text) => Assert.NotNull(new FarJumpCodec().Write(text, new byte[5]));

    // The linear window shows no more than the last 768 KiB (Mapper, ws.nesdev.org).
    [Theory]
    [InlineData(128 * K, "E000:0000", null)]
    [InlineData(128 * K, "DFFF:000F", "CW4416")]
    [InlineData(1 * M, "4000:0000", null)]
    [InlineData(1 * M, "3FFF:000F", "CW4416")]
    [InlineData(1 * M, "FFFE:000F", null)]
    [InlineData(1 * M, "FFFF:0000", "CW4416")]
    public void A_jump_lands_in_what_is_seen_after_power_on(int size, string entry, string? code)
    {
        var bench = new RomBench(new SwanPlatform()).Program("rom", 0, TestBytes.L(size - 0x10)).Program("rom", size - 0x10, new byte[0x10]).Size("rom", size).Header("entry", entry);
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    // Mapper 2001 has four bits for banks of 1 MiB (2003 mapper extended banking).
    [Theory]
    [InlineData(16 * M, "2001", null)]
    [InlineData(32 * M, "2001", "CW4420")]
    [InlineData(32 * M, "2003", null)]
    public void A_mapper_reaches_so_far(int size, string mapper, string? code)
    {
        var bench = Bench(size).Header("mapper", mapper);
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    [Theory]
    [InlineData("0x42", null)]
    [InlineData("0x4A", "CW4421")]
    [InlineData("0xA4", "CW4421")]
    public void A_game_number_has_decimal_digits(string number, string? code)
    {
        var bench = Bench(128 * K).Header("gameId", number);
        bench.Assemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    private static byte[] Footer(RomBench bench) => bench.Assemble().Bytes("rom")[^0x10..].ToArray();

    private static RomBench Bench(int size) =>
        new RomBench(new SwanPlatform()).Program("rom", -0x10000, TestBytes.L(0x10000 - 0x10)).Size("rom", size).Header("entry", "F000:0000");
}
