using Cartwright.Platforms;
using Cartwright.Platforms.Vectrex;
using Cartwright.Roms;
using Cartwright.Tests.Oracles;
using Xunit;

namespace Cartwright.Tests.Platforms.Vectrex;

public sealed class VectrexCheckTests
{
    private const string Start = "67204743452031393938" + "80";
    private const string Title = "F85020AA" + "5445535443415254" + "80";

    [Theory]
    [InlineData("67204743462031393938" + "80" + "FD0D" + Title + "00", "CW4560")]
    [InlineData("8E8000", "CW4560")]
    [InlineData("67204743452031393938" + "20" + "FD0D" + Title + "00", "CW4561")]
    [InlineData("67204743452031395858" + "80" + "FD0D" + Title + "00", "CW4561")]
    [InlineData(Start + "0048" + Title + "00", null)]
    [InlineData(Start + "1000" + Title + "00", "CW4562")]
    [InlineData(Start + "D000" + Title + "00", "CW4562")]
    [InlineData(Start + "FD0D" + "F85020AA" + "5445535443415254" + "00", "CW4563")]
    [InlineData(Start + "FD0D" + "F85020AA" + "5465737443617274" + "80" + "00", "CW4564")]
    [InlineData(Start + "FD0D" + Title + "00" + "FFFF", "CW4566")]
    [InlineData(Start + "FD0D" + Title + "00" + "0000", "CW4566")]
    [InlineData(Start + "FD0D" + Title + "00" + "00BD", null)]
    [InlineData(Start + "FD0D" + Title + Title + Title + "00", null)]
    public void Headers(string header, string? code) => Only(code, VectrexPrograms.Bench(header));

    [Theory]
    [InlineData(0x1F, null)]
    [InlineData(0x20, "CW4565")]
    [InlineData(0x100, "CW4565")]
    public void A_program_begins_right_behind_the_header(int offset, string? code) => Only(code, VectrexPrograms.Behind(offset, "LANTERN TIDE"));

    [Theory]
    [InlineData("halves-from-upper", 0x8000)]
    [InlineData("halves-from-lower", 0)]
    public void One_half_with_a_header_is_told(string mapper, int offset) =>
        Only("CW4567", new RomBench(new VectrexPlatform()) { Title = null }.Header("mapper", mapper).Program("rom", offset, VectrexPrograms.Whole()));

    [Theory]
    [InlineData("linear", "$0000", 0)]
    [InlineData("linear", "$7FFF", 0x7FFF)]
    [InlineData("halves-from-upper", "$0123", -0x8000 + 0x123)]
    [InlineData("halves-from-lower", "$0123", 0x123)]
    [InlineData("halves-from-upper", "00:0123", 0x123)]
    [InlineData("halves-from-lower", "01:0123", 0x8123)]
    public void Addresses(string mapper, string text, long offset) => Assert.Equal(offset, Locate(mapper, text).Offset);

    [Theory]
    [InlineData("linear", "$8000", "not the cartridge's")]
    [InlineData("linear", "$C880", "RAM")]
    [InlineData("linear", "$D004", "the VIA")]
    [InlineData("linear", "$F192", "the BIOS")]
    [InlineData("halves-from-upper", "02:0000", "last one")]
    public void Addresses_elsewhere(string mapper, string text, string words) => Assert.Contains(words, Locate(mapper, text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("linear", 60, 0x1000)]
    [InlineData("linear", 0x1001, 0x2000)]
    [InlineData("linear", 0x2001, 0x3000)]
    [InlineData("linear", 0x3001, 0x4000)]
    [InlineData("linear", 0x4001, 0x8000)]
    [InlineData("linear", 0x8001, null)]
    [InlineData("halves-from-upper", 1, 0x10000)]
    public void Sizes(string mapper, long needed, int? fit) => Assert.Equal(fit, Layout(mapper).Regions[0].Sizes.Fit(needed));

    // Chips of more than the ROM: 12 KiB are completed as 8 + 4 + 4, and all of it is repeated.
    [Fact]
    public void A_larger_chip_repeats_the_ROM()
    {
        using var bench = new CartBench { Platforms = PlatformCatalog.BuiltIn };
        bench.Write("main.bin", VectrexPrograms.Whole(length: 0x2800));
        bench.Manifest("""
            {
              "cart": { "name": "lantern-tide", "platform": "vectrex" },
              "programs": [ { "file": "main.bin", "offset": "0" } ],
              "board": { "use": "vectrex-single-8bit", "chips": { "U1": { "capacity": "32KiB" } } }
            }
            """);
        var rom = bench.Build().Cart!.Rom();
        var chip = Assert.Single(bench.Build().Chips).Bytes.ToArray();
        Assert.Equal(0x3000, rom.Length);
        byte[] half = [.. rom, .. rom[0x2000..]];
        Assert.Equal<byte>([.. half, .. half], chip);
    }

    [Theory]
    [InlineData(VectrexPrograms.Header, Certainty.Exact)]
    [InlineData("67204743452046", Certainty.Structural)]
    [InlineData("67204743462031", null)]
    public void Recognition(string header, Certainty? certainty)
    {
        Assert.Equal(certainty, Ask(VectrexPrograms.Whole(header))?.Certainty);
        Assert.Equal(certainty is null ? null : "linear", Ask(VectrexPrograms.Whole(header))?.Variant);
        byte[] upper = [.. TestBytes.All(0xFF, 0x8000), .. VectrexPrograms.Whole(header, 0x8000)];
        Assert.Equal(certainty, Ask(upper)?.Certainty);
        Assert.Equal(certainty is null ? null : "halves-from-upper", Ask(upper)?.Variant);
        Assert.Equal(certainty is null ? null : "halves-from-lower", Ask(VectrexPrograms.Whole(header, 0x10000))?.Variant);
    }

    [Fact]
    public void Nothing_is_claimed_for_short_and_blank_files()
    {
        for (var length = 0; length < 60; length++)
        {
            Assert.Null(Ask(new byte[length]));
            Ask(VectrexPrograms.Whole()[..length]);
            Ask([.. new byte[0x10000 - length], .. VectrexPrograms.Whole()[..length]]);
        }

        Assert.Null(Ask(new byte[0x8000]));
        Assert.Null(Ask(VectrexPrograms.Whole(length: 0x20000)));
    }

    [Fact]
    public void A_general_tool_recognises_a_build()
    {
        Tool.Require("file");
        using var folder = new TempFolder();
        folder.Write("lantern-tide.vec", VectrexPrograms.Behind(0x1F, "LANTERN TIDE").Assemble().Rom());
        var output = Tool.Succeed("file", folder.Path, "--brief", "lantern-tide.vec");
        Assert.Contains("Vectrex", output, StringComparison.Ordinal);
        Assert.Contains("LANTERN TIDE", output, StringComparison.Ordinal);
    }

    private static RecognitionClaim? Ask(byte[] file) => new VectrexPlatform().Recognise(file);

    private static PlatformLayout Layout(string mapper) => new VectrexPlatform().Layouts.First(layout => layout.Variant == mapper);

    private static AddressPlace Locate(string mapper, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? Layout(mapper).Addresses.Locate(address, _ => null) : throw new ArgumentException(text);

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes().Distinct());
    }
}
