using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.NeoGeoPocket;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.NeoGeoPocket;

public sealed class PocketTests
{
    // NGPC specification text: a header with entry 200040, id 1234, colour.
    [Fact]
    public void The_header_is_the_worked_one()
    {
        var rom = new RomBench(new PocketPlatform()) { Title = "TESTCART" }.Program("rom", 0x40, TestBytes.L(0x100)).Header("softwareId", "0x1234").Assemble().Bytes("rom");
        Assert.Equal(" LICENSED BY SNK CORPORATION"u8, rom[..28]);
        Assert.Equal("40002000" + "3412" + "0010" + "5445535443415254" + "20202020" + new string('0', 32), Convert.ToHexString(rom[0x1C..0x40]));
        Assert.Equal(512 << 10, rom.Length);
    }

    [Theory]
    [InlineData("licence", "HELLO", "CW4430")]
    [InlineData("entry", "0x00000040", "CW4431")]
    [InlineData("entry", "0x00200000", "CW4431")]
    [InlineData("entry", "0x00240000", "CW4431")]
    [InlineData("reserved", "FFFFFFFFFFFFFFFFFFFFFFFFFFFFFFFF", "CW4433")]
    public void What_the_bytes_can_show(string field, string value, string code)
    {
        var bench = Bench().Header(field, value);
        bench.TryAssemble();
        Assert.Equal([code], bench.Codes());
    }

    [Fact]
    public void Fill_that_must_be_erased_first()
    {
        var bench = Bench().Size("rom", null, 0x00);
        bench.Assemble();
        Assert.Equal(["CW4432"], bench.Codes());
    }

    [Fact]
    public void A_clean_cart_has_nothing_to_say()
    {
        var bench = Bench();
        bench.Assemble();
        Assert.Empty(bench.Codes());
    }

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(ushort id, byte version, byte console)
    {
        var first = Bench().Header("softwareId", $"0x{id:X4}").Header("version", $"{version}").Header("console", $"0x{console:X2}").Assemble().Bytes("rom").ToArray();
        var again = Bench();
        foreach (var entry in HeaderReader.Read(PocketHeader.Table, first, new HeaderContext(null, null, _ => first.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(first, again.Assemble().Bytes("rom").ToArray());
    }

    [Theory]
    [InlineData("$200040", 0x40)]
    [InlineData("$3FFFFF", 0x1FFFFF)]
    [InlineData("$800000", 0x200000)]
    public void Addresses_of_the_ROM(string text, long offset) => Assert.Equal(offset, Locate(text).Offset);

    [Theory]
    [InlineData("$004000", "RAM")]
    [InlineData("$400000", "no cartridge")]
    [InlineData("01:0000", "no banks")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    [Fact]
    public void An_image_is_recognised_by_its_licence()
    {
        var rom = Bench().Assemble().Bytes("rom").ToArray();
        Assert.Equal(Certainty.Exact, new PocketPlatform().Recognise(rom)!.Certainty);
        Assert.Null(new PocketPlatform().Recognise(rom.AsSpan(0, 0x3F)));
        Assert.Null(new PocketPlatform().Recognise(TestBytes.L(0x1000)));
    }

    private static RomBench Bench() => new RomBench(new PocketPlatform()).Program("rom", 0x40, TestBytes.L(0x8000));

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new PocketAddresses().Locate(address, _ => null) : throw new ArgumentException(text);
}
