using Cartwright.Headers;
using Cartwright.Platforms.Lynx;
using Cartwright.Tests.Oracles;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Lynx.LynxCarts;

namespace Cartwright.Tests.Platforms.Lynx;

public sealed class LynxContainerTests
{
    // Cartridge headers (The Atari Lynx Book): 256 KiB, digest computed by two independent programs.
    [Fact]
    public void The_container_is_the_worked_one()
    {
        var bench = new RomBench(Machine) { Title = "TESTCART" }.Program("rom", 0, Program()).Header("blockSize", "1024").Header("maker", "HOMEBREW");
        var container = bench.Assemble().Headers[0].Container.AsSpan();
        Assert.Equal("4C594E58000400000100" + "54455354", Convert.ToHexString(container[..14]));
        Assert.Equal("2E374FD4", TestBytes.Crc(container));
        Assert.Empty(bench.Codes());
    }

    [Theory]
    [InlineData("512", null, 128 * K, 0x200)]
    [InlineData("1024", null, 256 * K, 0x400)]
    [InlineData("2048", null, 512 * K, 0x800)]
    [InlineData("2048", 1024 * K, 1024 * K, 0x800)]
    [InlineData("by-size", null, 128 * K, 0x200)]
    [InlineData("by-size", 256 * K, 256 * K, 0x400)]
    public void A_block_is_a_256th(string blocks, int? stated, int size, int block)
    {
        var cart = new RomBench(Machine).Program("rom", 0, Program(0x1000, "0001028800040002")).Header("blockSize", blocks).Size("rom", stated).Assemble();
        Assert.Equal(size, cart.Rom.LengthOf("rom"));
        Assert.Equal(block, cart.Headers[0].Container[4] | (cart.Headers[0].Container[5] << 8));
        Assert.Equal(size > 512 * K ? "true" : "false", cart["audin"]);
        Assert.Equal(0, cart.Headers[0].Container[6] | cart.Headers[0].Container[7]);
    }

    // 384 KiB are not a size; the next is 512 KiB with blocks of 2048 bytes.
    [Fact]
    public void Odd_sizes_go_up_to_a_whole_number_of_blocks()
    {
        var cart = new RomBench(Machine).Program("rom", 0, Program(384 * K, "0001028800040002")).Assemble();
        Assert.Equal((512 * K, "2048"), (cart.Rom["rom"]!.Length, cart["bank0BlockSize"]));
        var bench = new RomBench(Machine).Program("rom", 0, Program()).Size("rom", 384 * K);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW3004"], bench.Codes());
    }

    [Fact]
    public void A_block_size_settles_the_size()
    {
        var bench = Bench(Program(260 * K));
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW3005"], bench.Codes());
        bench = Bench(Program()).Size("rom", 128 * K);
        Assert.Null(bench.TryAssemble());
        Assert.Equal(["CW3004"], bench.Codes());
    }

    [Theory]
    [InlineData("rotation", "left", 0x3A, 0x01)]
    [InlineData("rotation", "right", 0x3A, 0x02)]
    [InlineData("audin", "true", 0x3B, 0x01)]
    [InlineData("eeprom", "93C46", 0x3C, 0x01)]
    [InlineData("eeprom", "93C86", 0x3C, 0x05)]
    [InlineData("eepromOnCard", "true", 0x3C, 0x40)]
    [InlineData("eepromWidth", "8", 0x3C, 0x80)]
    [InlineData("reserved3C", "0x07", 0x3C, 0x38)]
    [InlineData("bank1BlockSize", "2048", 0x07, 0x08)]
    [InlineData("version", "2", 0x08, 0x02)]
    [InlineData("reserved3D", "010203", 0x3F, 0x03)]
    [InlineData("maker", "QUILLMOOR", 0x2A, 0x51)]
    [InlineData("title", "TIDE", 0x0A, 0x54)]
    public void Fields_stand_at_their_places(string field, string value, int offset, byte expected) =>
        Assert.Equal(expected, Bench(Program()).Header(field, value).Assemble().Headers[0].Container[offset]);

    [Fact]
    public void Fields_fill_the_container_and_a_wrong_block_size_is_refused()
    {
        Assert.Equal(LynxHeader.Length, LynxHeader.Table.Fields.Where(field => field.Offset != 0x3C).Sum(field => field.Length) + 1);
        var bench = Bench(Program()).Header("bank0BlockSize", "512");
        bench.TryAssemble();
        Assert.Equal(["CW4004"], bench.Codes());
    }

    [Property(MaxTest = 60)]
    public void What_a_reader_finds_builds_the_same_container(byte rotation, byte eeprom, bool onCard, ushort bank1, byte title)
    {
        var first = Bench(Program()).Header("rotation", $"0x{rotation:X2}").Header("eeprom", $"0x{eeprom % 8:X2}").Header("eepromOnCard", onCard ? "true" : "false")
            .Header("bank1BlockSize", $"{bank1}").Header("title", new string('T', title % 33)).Assemble().Headers[0].Container;
        var again = Bench(Program());
        foreach (var entry in HeaderReader.Read(LynxHeader.Table, first.AsSpan(), new HeaderContext(null, null, _ => 256 * K))!.Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(first, again.Assemble().Headers[0].Container);
    }

    [Fact]
    public void The_exchange_file_begins_with_it_and_a_general_tool_knows_it()
    {
        var cart = Bench(Program()).Header("maker", "QUILLMOOR").Assemble();
        var file = Machine.Exchange(cart).SelectMany(part => part.ToArray()).ToArray();
        Assert.Equal(LynxHeader.Length + (256 * K), file.Length);
        Assert.Equal(("lnx", Program()[0]), (Machine.Extension(cart), file[LynxHeader.Length]));
        Tool.Require("file");
        using var folder = new TempFolder();
        folder.Write("lantern-tide.lnx", file);
        Assert.Equal("Lynx cartridge, bank 0 256k, \"LANTERN TIDE\", \"QUILLMOOR\"", Tool.Succeed("file", folder.Path, "--brief", "lantern-tide.lnx").Trim());
    }
}
