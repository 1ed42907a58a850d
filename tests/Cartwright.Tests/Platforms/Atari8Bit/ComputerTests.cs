using Cartwright.Platforms.Atari8Bit;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.Atari8Bit;

public sealed class ComputerTests
{
    public static TheoryData<string, int> Every() => new(ComputerScheme.All.SelectMany(scheme => scheme.KiB.Select(kib => (scheme.Name, kib))));

    [Theory]
    [MemberData(nameof(Every))]
    public void A_clean_cartridge_has_no_findings_and_is_its_program(string scheme, int kib)
    {
        var bench = ComputerPrograms.Bench(scheme, kib << 10);
        var cart = bench.Assemble();
        Assert.Empty(bench.Codes());
        Assert.Equal(ComputerPrograms.Whole(scheme, kib << 10), cart.Rom());
        Assert.Equal("rom", new Atari8BitPlatform().Extension(cart));
    }

    // Memory map extract, cartridge B: run address, 00, options, init address. The least that starts: 00, 04 and an init that returns.
    [Fact]
    public void The_trailer_is_written()
    {
        var bench = new RomBench(new Atari8BitPlatform()).Program("rom", -0x2000, TestBytes.All(0xEA, 0x1F00)).Header("runAddress", "$A000").Header("initAddress", "$A010");
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal("00A0000410A0", Convert.ToHexString(rom.AsSpan(rom.Length - 6)));
    }

    [Theory]
    [InlineData("bootDisk", "true", 0x05)]
    [InlineData("reservedOption1", "true", 0x06)]
    [InlineData("runCartridge", "false", 0x00)]
    [InlineData("reservedOptions3", "0xF", 0x7C)]
    [InlineData("diagnostic", "true", 0x84)]
    public void Bits_of_the_option_byte(string field, string value, int options)
    {
        var bench = new RomBench(new Atari8BitPlatform()).Program("rom", -0x2000, TestBytes.All(0xEA, 0x1F00)).Header("runAddress", "$A000").Header("initAddress", "$A010").Header(field, value);
        Assert.Equal(options, bench.Assemble().Rom()[^3]);
    }

    [Fact]
    public void A_programs_own_zero_option_byte_stays()
    {
        var cart = ComputerPrograms.Bench("standard", TestBytes.All(0xEA, 0x2000).PutTrailer(0x2000, 0, 0x00, 0xBF00)).Assemble();
        Assert.Equal("0000000000BF", Convert.ToHexString(cart.Rom().AsSpan(0x1FFA)));
        Assert.Equal("false", cart["runCartridge"]);
    }

    // A ROM of 4 KiB belongs at $B000: short programs go to the end, under the trailer.
    [Theory]
    [InlineData("standard", 0x1000, 0x1000)]
    [InlineData("right-slot", 0x1000, 0x1000)]
    [InlineData("standard", 0x3000, 0x1000)]
    public void Short_programs_end_where_the_slot_ends(string scheme, int length, int before)
    {
        var program = ComputerPrograms.Whole(scheme, length);
        var start = scheme == "right-slot" ? 0xA000 : 0xC000;
        Assert.True(ConsoleAddress.TryParse($"${start - length:X4}", out var address));
        var place = new ComputerAddresses(ComputerScheme.Named(scheme)).Locate(address, _ => null);
        var rom = new RomBench(new Atari8BitPlatform()).Header("scheme", scheme).Program("rom", place.Offset, program).Assemble().Rom();
        Assert.Equal(before + length, rom.Length);
        Assert.Equal(program, rom[before..]);
        Assert.False(rom.AsSpan(0, before).ContainsAnyExcept((byte)0xFF));
    }

    [Theory]
    [InlineData("standard", "$A000", -0x2000)]
    [InlineData("standard", "$8000", -0x4000)]
    [InlineData("right-slot", "$8000", -0x2000)]
    [InlineData("xegs", "$A000", -0x2000)]
    [InlineData("xegs", "02:8010", 0x4010)]
    [InlineData("megacart", "02:8010", 0x8010)]
    [InlineData("williams", "$03A010", 0x6010)]
    public void Addresses(string scheme, string text, long offset) => Assert.Equal((null, offset), (Locate(scheme, text).Problem, Locate(scheme, text).Offset));

    [Theory]
    [InlineData("standard", "$C000", "not among")]
    [InlineData("standard", "01:A000", "never switched")]
    [InlineData("right-slot", "$A000", "not among")]
    [InlineData("xegs", "$8000", "write bank:address")]
    [InlineData("williams", "08:A000", "00 to 07")]
    [InlineData("oss", "$A000", "write `offset`")]
    public void Addresses_elsewhere(string scheme, string text, string words) => Assert.Contains(words, Locate(scheme, text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("standard", 1, 0x2000)]
    [InlineData("standard", 0x2001, 0x4000)]
    [InlineData("standard", 0x4001, null)]
    [InlineData("xegs", 0x2000, 0x8000)]
    [InlineData("megacart", 0x4001, 0x8000)]
    [InlineData("williams", 0x8001, 0x10000)]
    public void Sizes(string scheme, long needed, int? fit) => Assert.Equal(fit, ComputerScheme.Named(scheme).SizeRule.Fit(needed));

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(ushort run, ushort init, byte options, byte present)
    {
        var first = new RomBench(new Atari8BitPlatform()).Program("rom", -0x2000, TestBytes.All(0xEA, 0x1FFA))
            .Header("runAddress", $"${run:X4}").Header("initAddress", $"${init:X4}").Header("cartridgePresent", $"0x{present:X2}").Header("bootDisk", (options & 1) == 0 ? "false" : "true")
            .Header("reservedOptions3", $"0x{options & 0xF:X}").Header("diagnostic", (options & 0x80) == 0 ? "false" : "true").TryAssemble()!;
        var again = new RomBench(new Atari8BitPlatform()).Program("rom", -0x2000, TestBytes.All(0xEA, 0x1FFA));
        foreach (var entry in ComputerPrograms.Read(first.Headers[0], first.Rom(), []).Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(first.Rom(), again.TryAssemble()!.Rom());
    }

    private static AddressPlace Locate(string scheme, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new ComputerAddresses(ComputerScheme.Named(scheme)).Locate(address, _ => null) : throw new ArgumentException(text);
}
