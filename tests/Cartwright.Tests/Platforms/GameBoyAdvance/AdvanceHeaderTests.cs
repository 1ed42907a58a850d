using System.IO.Hashing;
using System.Security.Cryptography;
using Cartwright.Headers;
using Cartwright.Platforms.GameBoyAdvance;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.GameBoyAdvance;

public sealed class AdvanceHeaderTests
{
    // GBATEK, GBA Cartridge Header: worked values of the complement check; the rest of 0xA0-0xBC is zero, 0xB2 is 96.
    [Theory]
    [InlineData("", "", "", "0", "0x00", 0x51)]
    [InlineData("CARTWRIGHT", "ACWE", "00", "1", "0x00", 0xD1)]
    public void The_complement_is_the_worked_one(string title, string code, string maker, string version, string device, int complement)
    {
        var cart = AdvancePrograms.Bench().Header("title", title).Header("gameCode", code).Header("makerCode", maker).Header("version", version).Header("deviceType", device).Assemble();
        Assert.Equal(complement, cart.Bytes("rom")[0xBD]);
    }

    // The same source: only a maker, only a device type, both; all else zero.
    [Theory]
    [InlineData("01", "0x00", 0xF0)]
    [InlineData("", "0x80", 0xD1)]
    [InlineData("01", "0x80", 0x70)]
    public void The_complement_covers_maker_and_device(string maker, string device, int complement)
    {
        var cart = AdvancePrograms.Bench().Header("title", "").Header("makerCode", maker).Header("deviceType", device).Assemble();
        Assert.Equal(complement, cart.Bytes("rom")[0xBD]);
    }

    // crt0.S v1.28, GBA start-up file; the digests are those of the same bytes in several independent sources.
    [Fact]
    public void The_bitmap_is_the_one_every_source_gives()
    {
        Assert.Equal(156, BootBitmap.Bytes.Length);
        Assert.Equal("08a0153cfd6b0ea54b938f7d209933fa849da0d56f5a34c481060c9ff2fad818", Convert.ToHexStringLower(SHA256.HashData(BootBitmap.Bytes.AsSpan())));
        Assert.Equal(0xD0BEB55E, Crc32.HashToUInt32(BootBitmap.Bytes.AsSpan()));
    }

    [Fact]
    public void A_blank_header_is_filled_in()
    {
        var bench = new RomBench(new AdvancePlatform()) { Title = "LANTERN TIDE", Revision = "3" }.Program("rom", 0, AdvancePrograms.Whole());
        var rom = bench.Assemble().Bytes("rom");
        Assert.Empty(bench.Log.ToSorted());
        Assert.Equal("2E0000EA", Convert.ToHexString(rom[..4]));
        Assert.Equal("LANTERN TIDE"u8, rom.Slice(0xA0, 12));
        Assert.Equal(0x96, rom[0xB2]);
        Assert.Equal(3, rom[0xBC]);
        Assert.True(AdvanceHeader.ComplementIsRight(rom));
    }

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(byte version, byte unit, byte device, ushort title)
    {
        var program = AdvancePrograms.Whole();
        var first = AdvancePrograms.Bench(program).Header("title", $"T{title}").Header("version", $"{version}").Header("unitCode", $"0x{unit:X2}").Header("deviceType", $"0x{device:X2}").Assemble().Bytes("rom").ToArray();
        var again = AdvancePrograms.Bench(program);
        foreach (var entry in HeaderReader.Read(AdvanceHeader.Table, first, new HeaderContext(null, null, _ => first.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(first, again.Assemble().Bytes("rom").ToArray());
    }

    [Property(MaxTest = 100)]
    public void One_wrong_byte_of_the_header_is_found(byte at, byte mask)
    {
        var rom = AdvancePrograms.Bench().Assemble().Bytes("rom").ToArray();
        rom[0xA0 + (at % 0x1D)] ^= (byte)(mask | 1);
        Assert.False(AdvanceHeader.ComplementIsRight(rom));
    }

    [Fact]
    public void The_file_command_knows_the_ROM_and_its_title()
    {
        using var folder = new TempFolder();
        folder.Write("game.gba", AdvancePrograms.Bench().Assemble().Bytes("rom"));
        var words = Tool.Succeed("file", folder.Path, "--brief", "game.gba");
        Assert.Contains("Game Boy Advance ROM image", words, StringComparison.Ordinal);
        Assert.Contains("LANTERN TIDE", words, StringComparison.Ordinal);
    }
}
