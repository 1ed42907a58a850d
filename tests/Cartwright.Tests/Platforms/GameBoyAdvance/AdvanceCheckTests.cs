using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.GameBoyAdvance;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoyAdvance;

public sealed class AdvanceCheckTests
{
    private static byte[] Bitmap(int at, byte value)
    {
        var bytes = BootBitmap.Bytes.ToArray();
        bytes[at - BootBitmap.Offset] = value;
        return bytes;
    }

    [Theory]
    [InlineData("FEFFFFEA", "CW4300")]
    [InlineData("FFFFFF01", "CW4301")]
    [InlineData("000000EA", "CW4300")]
    public void The_entry(string digits, string code) => Only(code, AdvancePrograms.Changed(0, Convert.FromHexString(digits)));

    [Fact]
    public void An_entry_where_no_program_is() =>
        Only("CW4300", new RomBench(new AdvancePlatform()).Program("rom", 0x200, TestBytes.L(0x100)));

    [Fact]
    public void Another_bitmap() => Only("CW4302", AdvancePrograms.Changed(BootBitmap.Offset, Bitmap(0x20, 0x00)));

    [Fact]
    public void Another_bitmap_kept_on_purpose() =>
        Only("CW4303", AdvancePrograms.Changed(BootBitmap.Offset, Bitmap(0x20, 0x00)).Header("bitmap", "keep"));

    [Theory]
    [InlineData(BootBitmap.DebugAt, 0xA5)]
    [InlineData(BootBitmap.KeyAt, 0xFB)]
    public void Bits_the_BIOS_does_not_compare(int at, byte value) => Only("CW4304", AdvancePrograms.Changed(BootBitmap.Offset, Bitmap(at, value)));

    [Fact]
    public void Another_fixed_byte() => Only("CW4305", AdvancePrograms.Changed(0xB2, 0x95));

    [Fact]
    public void Reserved_bytes_in_use() => Only("CW4306", AdvancePrograms.Changed(0xBE, 0x01));

    [Fact]
    public void A_marker_of_save_memory() => Only("CW4307", AdvancePrograms.Changed(0x1000, "SRAM_V113"u8.ToArray()));

    [Fact]
    public void Markers_of_two_kinds() => Only("CW4308", AdvancePrograms.Changed(0x1000, [.. "SRAM_V113\0\0\0FLASH1M_Vnnn"u8]));

    [Fact]
    public void EEPROM_over_the_end_of_a_full_ROM()
    {
        var bench = AdvancePrograms.Changed(0x1000, "EEPROM_V124"u8.ToArray()).Program("rom", AdvanceAddresses.Window - 0x80, new byte[0x80]);
        bench.Assemble();
        Assert.Equal(["CW4307", "CW4309"], bench.Codes());
    }

    // GBATEK, GBA Cart Backup IDs: word-aligned, three digits or the letters nnn; other text behind _V belongs to a library.
    [Theory]
    [InlineData("SRAM_V113", 4, 1)]
    [InlineData("SRAM_Vnnn", 4, 1)]
    [InlineData("SRAM_V11", 4, 0)]
    [InlineData("FLASH_V%d.%d", 4, 0)]
    [InlineData("SRAM_V113", 6, 0)]
    [InlineData("FLASH1M_V102", 8, 1)]
    public void Markers_are_told_from_other_text(string text, int at, int count)
    {
        var rom = new byte[0x40];
        System.Text.Encoding.ASCII.GetBytes(text).CopyTo(rom, at);
        Assert.Equal(count, SaveMarkers.Find(rom).Count);
    }

    [Theory]
    [InlineData("$08000000", 0)]
    [InlineData("$080000C0", 0xC0)]
    [InlineData("$0A001000", 0x1000)]
    [InlineData("$0DFFFFFF", 0x1FFFFFF)]
    public void Addresses_of_the_ROM(string text, long offset) => Assert.Equal(offset, Locate(text).Offset);

    [Theory]
    [InlineData("$03000000", "work RAM")]
    [InlineData("$0E000000", "save memory")]
    [InlineData("$00000000", "BIOS")]
    [InlineData("01:0000", "no banks")]
    [InlineData("$10000000", "beyond")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    [Fact]
    public void An_image_is_recognised_in_either_order()
    {
        var platform = new AdvancePlatform();
        var rom = AdvancePrograms.Bench().Assemble().Bytes("rom").ToArray();
        Assert.Equal(Certainty.Exact, platform.Recognise(rom)!.Certainty);
        Assert.Equal(ImageOrder.Console, platform.Recognise(rom)!.Order);
        WordSwap.Swap16(rom);
        Assert.Equal(ImageOrder.ByteSwapped, platform.Recognise(rom)!.Order);
        Assert.Equal(ImageOrder.ByteSwapped, platform.OrderOf(rom));
    }

    [Fact]
    public void A_program_without_a_header_is_a_candidate() =>
        Assert.Equal(Certainty.Candidate, new AdvancePlatform().Recognise([0x3E, 0x00, 0x00, 0xEA, .. new byte[0x200]])!.Certainty);

    [Fact]
    public void Blank_and_random_bytes_are_not_recognised()
    {
        var platform = new AdvancePlatform();
        for (var length = 0; length < 0x140; length++)
        {
            Assert.Null(platform.Recognise(new byte[length]));
            Assert.Null(platform.Recognise(TestBytes.All(0xFF, length)));
        }

        var random = new Random(1);
        for (var i = 0; i < 500; i++)
        {
            var bytes = new byte[random.Next(1, 0x8000)];
            random.NextBytes(bytes);
            Assert.NotEqual(Certainty.Exact, platform.Recognise(bytes)?.Certainty);
        }
    }

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new AdvanceAddresses().Locate(address, _ => null) : throw new ArgumentException(text);

    private static void Only(string code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal([code], bench.Codes());
        Assert.All(bench.Log.ToSorted(), finding => Assert.Equal(finding.Severity, AdvanceFindings.All.Single(rule => rule.Code == code).Severity));
    }
}
