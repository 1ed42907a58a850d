using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Commodore;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Commodore.CommodorePrograms;

namespace Cartwright.Tests.Platforms.Commodore;

public sealed class C128Tests
{
    // Function ROM identification: two jumps, the identifier, CBM.
    [Theory]
    [InlineData(0x4000)]
    [InlineData(0x8000)]
    public void The_header_is_written(int size)
    {
        var bench = C128(size);
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal("4C10804C2080FF43424D", Convert.ToHexString(rom.AsSpan(0, C128Header.Length)));
    }

    [Theory]
    [InlineData("never", "00", "CW4524")]
    [InlineData("at-reset", "01", null)]
    [InlineData("after-basic", "FF", null)]
    [InlineData("0x42", "42", null)]
    public void The_identifier(string word, string digits, string? code)
    {
        var bench = C128().Header("identifier", word);
        Assert.Equal(digits, Convert.ToHexString(bench.Assemble().Rom().AsSpan(6, 1)));
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }

    [Theory]
    [InlineData("4C 1080 4C 2080 FF 43424D", null)]
    [InlineData("4C 1080 4C 2080 FF C3C2CD", null)]
    [InlineData("4C 1080 4C 2080 FF 43424E", "CW4523")]
    [InlineData("4C 0980 4C 2080 FF 43424D", "CW4527")]
    [InlineData("4C 0A80 4C 2080 FF 43424D", null)]
    [InlineData("4C 00E0 4C 2080 FF 43424D", null)]
    [InlineData("4C 0010 4C 2080 FF 43424D", "CW4526")]
    [InlineData("4C 1080 4C 00E0 FF 43424D", "CW4528")]
    [InlineData("4C 1080 20 2080 FF 43424D", "CW4535")]
    [InlineData("78 1080 4C 2080 FF 43424D", "CW4535")]
    public void Checks(string header, string? code) => Only(code, C128(digits: header).Size("rom", 0x8000));

    [Fact]
    public void A_cold_start_where_no_program_is() => Only("CW4525", new RomBench(new C128Platform()).Program("rom", 0, Noise(0x1000, 0, "4C00B0 4C1080 FF 43424D")));

    [Fact]
    public void A_stated_mark_is_not_an_error() => Only("CW4524", C128(digits: "4C 1080 4C 2080 FF 414243").Header("mark", "0x414243"));

    [Theory]
    [InlineData(0x7EFF, null)]
    [InlineData(0x7F00, "CW4536")]
    [InlineData(0x7FFF, "CW4536")]
    public void Bytes_under_the_registers(int at, string? code) => Only(code, new RomBench(new C128Platform()).Program("rom", 0, Noise(0x20, 0, "4C1080 4C1080 FF 43424D")).Program("rom", at, [0x12]));

    [Fact]
    public void A_load_address() => Only("CW4520", new RomBench(new C128Platform()).Program("rom", 0, [0x00, 0x80, .. C128().Assemble().Rom()]));

    [Fact]
    public void A_container_as_a_program() => Only("CW4522", new RomBench(new C128Platform()).Program("rom", 0, C128().Assemble().File(new C128Platform())));

    [Theory]
    [InlineData("$8000", 0)]
    [InlineData("$C000", 0x4000)]
    [InlineData("$FEFF", 0x7EFF)]
    public void Addresses(string text, long offset) => Assert.Equal(offset, Locate(text).Offset);

    [Theory]
    [InlineData("$FF00", "registers")]
    [InlineData("$7FFF", "RAM")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData(0x4000, 0x4050)]
    [InlineData(0x8000, 0x8060)]
    public void The_container_has_a_packet_for_each_half(int size, int length)
    {
        var cart = C128(size).Assemble();
        var file = cart.File(new C128Platform());
        Assert.Equal(length, file.Length);
        Assert.Equal(cart.Rom(), CrtFile.Read(file, "C128 CARTRIDGE")!.Runs.SelectMany(run => file[run.Start..(run.Start + run.Length)]));
    }

    // Both marks that are told of, the identifier that working images have, and both jumps to $800A.
    [Theory]
    [InlineData("4C0A80 4C0A80 FF 43424D", true)]
    [InlineData("4C0A80 4C0A80 FF C3C2CD", true)]
    [InlineData("4C0A80 EA0A80 FF 43424D", false)]
    [InlineData("780A80 4C0A80 FF 43424D", false)]
    [InlineData("4C0A80 4C0A80 FF 43424E", false)]
    [InlineData("4C6F20 4C6F20 20 43424D", false)]
    public void A_function_ROM_is_recognised(string header, bool isOne)
    {
        var image = Noise(0x4000, 0, header);
        Assert.Equal(isOne ? Certainty.Exact : null, new C128Platform().Recognise(image)?.Certainty);
        Assert.Equal(isOne ? 2 : null, new C128Platform().Recognise([0x00, 0x80, .. image])?.PrefixLength);
    }

    [Fact]
    public void A_container_is_recognised() => Assert.Equal((Certainty.Exact, 0x50), Claim(C128().Assemble().File(new C128Platform())));

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(ushort cold, ushort warm, byte identifier)
    {
        var first = C128(digits: "00 0000 00 0000 00 000000").Header("coldStart", $"${cold:X4}").Header("warmStart", $"${warm:X4}").Header("identifier", $"0x{identifier:X2}");
        var rom = first.TryAssemble()!.Rom();
        var again = C128(digits: "00 0000 00 0000 00 000000");
        foreach (var entry in HeaderReader.Read(C128Header.Table, rom, new HeaderContext(null, null, _ => rom.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(rom, again.TryAssemble()!.Rom());
    }

    private static (Certainty Certainty, int Prefix) Claim(byte[] file) =>
        new C128Platform().Recognise(file) is { } claim ? (claim.Certainty, claim.PrefixLength) : default;

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new C128Platform().Layouts[0].Addresses.Locate(address, _ => null) : throw new ArgumentException(text);
}
