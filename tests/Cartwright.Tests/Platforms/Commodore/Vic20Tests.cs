using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Commodore;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;
using static Cartwright.Tests.Platforms.Commodore.CommodorePrograms;

namespace Cartwright.Tests.Platforms.Commodore;

public sealed class Vic20Tests
{
    // VIC-20 cartridge format: cold start, warm start, A0CBM at $A000.
    [Theory]
    [InlineData("block-5", 0x1000, 0)]
    [InlineData("block-5", 0x2000, 0)]
    [InlineData("blocks-3-5", 0x4000, 0x2000)]
    [InlineData("blocks-2-5", 0x4000, 0x2000)]
    [InlineData("blocks-1-5", 0x4000, 0x2000)]
    public void The_mark_is_written_where_the_KERNAL_looks(string mapping, int size, int header)
    {
        var bench = Vic20(mapping, size, header);
        var rom = bench.Assemble().Rom();
        Assert.Empty(bench.Codes());
        Assert.Equal("09A009A0" + Vic20Mark, Convert.ToHexString(rom.AsSpan(header, StartHeader.Length)));
        Assert.Equal(TestBytes.L(size)[..header], rom[..header]);
    }

    [Theory]
    [InlineData("block-1")]
    [InlineData("block-2")]
    [InlineData("block-3")]
    public void Other_blocks_are_started_by_hand_and_untouched(string mapping)
    {
        var bench = Vic20(mapping);
        bench.Assemble();
        Assert.Single(bench.Codes(), "CW4524");
        Assert.Equal(Noise(0x2000, 0, "09A0 0000 0000000000"), Vic20(mapping).Assemble().Rom());
    }

    [Theory]
    [InlineData("block-5", 0x0FFF, 0x1000)]
    [InlineData("block-5", 0x1001, 0x2000)]
    [InlineData("block-5", 0x2001, null)]
    [InlineData("blocks-3-5", 0x2001, 0x4000)]
    [InlineData("block-1", 1, 0x1000)]
    public void Sizes(string mapping, long needed, int? fit) => Assert.Equal(fit, Vic20Mappings.Named(mapping).Sizes.Fit(needed));

    [Theory]
    [InlineData("block-5", "$A000", 0)]
    [InlineData("block-5", "$B000", 0x1000)]
    [InlineData("blocks-3-5", "$6000", 0)]
    [InlineData("blocks-3-5", "$A000", 0x2000)]
    [InlineData("blocks-2-5", "$4000", 0)]
    [InlineData("blocks-1-5", "$2000", 0)]
    [InlineData("block-3", "$7000", 0x1000)]
    public void Addresses(string mapping, string text, long offset) => Assert.Equal(offset, Locate(mapping, text).Offset);

    [Theory]
    [InlineData("block-5", "$6000", "does not fill")]
    [InlineData("block-3", "$A000", "does not fill")]
    [InlineData("block-5", "$E000", "KERNAL")]
    [InlineData("block-5", "$1000", "RAM")]
    public void Addresses_elsewhere(string mapping, string text, string words) => Assert.Contains(words, Locate(mapping, text).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("09A0 09A0 4130C3C2CD", null)]
    [InlineData("09A0 09A0 C3C2CD3830", "CW4523")]
    [InlineData("05A0 09A0 4130C3C2CD", "CW4527")]
    [InlineData("0060 09A0 4130C3C2CD", "CW4526")]
    [InlineData("00B0 09A0 4130C3C2CD", "CW4525")]
    [InlineData("09A0 00B0 4130C3C2CD", "CW4528")]
    public void Checks(string header, string? code) => Only(code, Vic20(size: 0x0F00, digits: header).Size("rom", 0x2000));

    [Fact]
    public void A_ROM_of_4_KiB_is_seen_twice() => Only(null, Vic20(size: 0x1000, digits: "09B0 09B0 4130C3C2CD"));

    [Fact]
    public void Blocks_that_have_changed_places()
    {
        var rom = Vic20("blocks-3-5", 0x4000, 0x2000).Assemble().Rom();
        Only("CW4529", new RomBench(new Vic20Platform()).Header("mapping", "blocks-3-5").Program("rom", 0, [.. rom[0x2000..], .. rom[..0x2000]]));
    }

    [Fact]
    public void A_load_address_before_a_mark() => Only("CW4520", new RomBench(new Vic20Platform()).Program("rom", 0, [0x00, 0xA0, .. Vic20().Assemble().Rom()[..0x1F00]]));

    [Theory]
    [InlineData("0060 4C0061 200061", true)]
    [InlineData("0070 4C0071 200071", true)]
    [InlineData("0060 4C0061 EAEAEA", false)]
    [InlineData("0061 4C0161 200161", false)]
    [InlineData("0090 4C0091 200091", false)]
    [InlineData("0060 4C0064 200064", false)]
    public void A_load_address_without_a_mark(string start, bool told)
    {
        byte[] program = [.. Convert.FromHexString(start.Replace(" ", "", StringComparison.Ordinal)), .. TestBytes.All(0xEA, 0x200)];
        var bench = new RomBench(new Vic20Platform()).Header("mapping", "block-3").Program("rom", 0, program);
        bench.Assemble();
        Assert.Equal(told ? ["CW4521", "CW4524"] : ["CW4524"], bench.Codes());
        Assert.Equal(told ? Certainty.Candidate : null, new Vic20Platform().Recognise(program)?.Certainty);
        Assert.Equal(told ? 2 : null, new Vic20Platform().Recognise(program)?.PrefixLength);
    }

    [Fact]
    public void A_container_as_a_program() => Only("CW4522", new RomBench(new Vic20Platform()).Program("rom", 0, Vic20().Assemble().File(new Vic20Platform())));

    [Theory]
    [InlineData("block-5", 0x2000, 0)]
    [InlineData("blocks-3-5", 0x4000, 0x2000)]
    [InlineData("blocks-1-5", 0x4000, 0x2000)]
    [InlineData("block-2", 0x2000, 0)]
    public void The_container_has_a_packet_for_each_block(string mapping, int size, int header)
    {
        var cart = Vic20(mapping, size, header).Assemble();
        var file = cart.File(new Vic20Platform());
        Assert.Equal(cart.Rom(), CrtFile.Read(file, "VIC20 CARTRIDGE")!.Runs.SelectMany(run => file[run.Start..(run.Start + run.Length)]));
        Assert.Equal((Certainty.Exact, mapping), (Ask(file)!.Certainty, Ask(file)!.Variant));
    }

    // Both lengths of unpadded files were seen.
    [Theory]
    [InlineData(0x04B0)]
    [InlineData(0x2000)]
    public void A_cartridge_is_recognised(int length)
    {
        var image = Vic20(size: length).Assemble().Rom()[..length];
        Assert.Equal((Certainty.Exact, 0, "block-5"), (Ask(image)!.Certainty, Ask(image)!.PrefixLength, Ask(image)!.Variant));
        Assert.Equal((Certainty.Exact, 2, "block-5"), (Ask([0x00, 0xA0, .. image])!.Certainty, Ask([0x00, 0xA0, .. image])!.PrefixLength, Ask([0x00, 0xA0, .. image])!.Variant));
    }

    [Fact]
    public void Two_blocks_are_recognised_and_which_is_not()
    {
        var rom = Vic20("blocks-3-5", 0x4000, 0x2000).Assemble().Rom();
        Assert.Equal((Certainty.Exact, null), (Ask(rom)!.Certainty, Ask(rom)!.Variant));
    }

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(ushort cold, ushort warm)
    {
        var rom = Vic20(digits: "0000 0000 0000000000").Header("coldStart", $"${cold:X4}").Header("warmStart", $"${warm:X4}").TryAssemble()!.Rom();
        var again = Vic20(digits: "0000 0000 0000000000");
        foreach (var entry in HeaderReader.Read(StartHeader.ForVic20(0), rom, new HeaderContext(null, null, _ => rom.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);
        Assert.Equal(rom, again.TryAssemble()!.Rom());
    }

    private static RecognitionClaim? Ask(byte[] file) => new Vic20Platform().Recognise(file);

    private static AddressPlace Locate(string mapping, string text) =>
        ConsoleAddress.TryParse(text, out var address) ? Vic20Mappings.Named(mapping).Addresses.Locate(address, _ => null) : throw new ArgumentException(text);
}
