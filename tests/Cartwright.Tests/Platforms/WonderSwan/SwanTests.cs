using Cartwright.Headers;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Cartwright.Platforms.WonderSwan;
using Cartwright.Roms;
using FsCheck.Xunit;
using Xunit;

namespace Cartwright.Tests.Platforms.WonderSwan;

public sealed class SwanTests
{
    private const int K = 1 << 10;

    // ROM header (ws.nesdev.org): values computed by two independent programs for the bytes of the generator.
    [Fact]
    public void The_checksum_and_the_image_are_the_worked_ones()
    {
        var rom = Color(TestBytes.L(128 * K)).Assemble().Bytes("rom");
        Assert.Equal("EA000000E0" + "0000" + "0142" + "00000204" + "00" + "920C", Convert.ToHexString(rom[^0x10..]));
        Assert.Equal("34CFBA33", TestBytes.Crc(rom));
        var chip = new byte[1024 * K];
        Mirror.Fill(rom, chip);
        Assert.Equal("FBF296D5", TestBytes.Crc(chip));
    }

    // The same source: a body of 100 KiB, moved to the end, with 0xFF in front of it. Its jump goes into the fill, which is told.
    [Fact]
    public void A_smaller_program_lies_at_the_end_and_is_summed_with_its_fill()
    {
        var bench = Color(TestBytes.L(100 * K));
        var rom = bench.TryAssemble()!.Bytes("rom");
        Assert.Contains("CW4416", bench.Codes());
        Assert.Equal(128 * K, rom.Length);
        Assert.False(rom[..(28 * K)].ContainsAnyExcept((byte)0xFF));
        Assert.Equal(0xAB95, rom[^2] | (rom[^1] << 8));
    }

    [Theory]
    [InlineData(64 * K)]
    [InlineData(128 * K)]
    [InlineData(1024 * K)]
    public void Fill_in_front_by_whole_banks_leaves_the_sum(int size)
    {
        var bench = new RomBench(new SwanPlatform()).Program("rom", 0, TestBytes.L(64 * K)).Size("rom", size).Keep(false)
            .Header("entry", "EA000000F0").Header("romSize", "raw 0x03").Header("save", "none");
        var rom = bench.Assemble().Bytes("rom");
        Assert.Equal(0x4DF5, rom[^2] | (rom[^1] << 8));
        if (size == 64 * K)
            Assert.Equal("52FAA4E0", TestBytes.Crc(rom));
    }

    // The same source: all 0xFF, the checksum's own bytes left out.
    [Fact]
    public void A_blank_image_sums_to_the_worked_value() =>
        Assert.Equal(0xFE02UL, SwanHeader.Table.Checksums[0].Compute(TestBytes.All(0xFF, 128 * K)));

    // The same source: the body of 100 KiB before anything is put in front of it, and 64 KiB mirrored as if that were a ROM of 128 KiB.
    [Fact]
    public void Fill_and_repetition_change_the_sum()
    {
        var body = TestBytes.L((100 * K) - 0x10).Concat(Convert.FromHexString("EA000000E0" + "0000" + "0142" + "00000204" + "00" + "0000")).ToArray();
        Assert.Equal(0x1B95UL, SwanHeader.Table.Checksums[0].Compute(body));
        Assert.Equal(0xAB95UL, SwanHeader.Table.Checksums[0].Compute([.. TestBytes.All(0xFF, 28 * K), .. body]));
        var small = TestBytes.L((64 * K) - 0x10).Concat(Convert.FromHexString("EA000000F0" + "0000" + "0000" + "00030004" + "00" + "F54D")).ToArray();
        Assert.Equal(0x9D2CUL, SwanHeader.Table.Checksums[0].Compute([.. small, .. small]));
    }

    [Theory]
    [InlineData("entry", "0000000000", "CW4415")]
    [InlineData("entry", "EA00000080", "CW4416")]
    [InlineData("entry", "EAF0FF00F0", "CW4416")]
    [InlineData("maintenance", "0x01", "CW4417")]
    [InlineData("save", "0x01", "CW4419")]
    public void What_the_bytes_can_show(string field, string value, string code)
    {
        var bench = Bench(128 * K).Header(field, value);
        bench.TryAssemble();
        Assert.Equal([code], bench.Codes());
    }

    [Fact]
    public void A_size_without_a_code()
    {
        var bench = Bench(64 * K);
        bench.Assemble();
        Assert.Equal(["CW4418"], bench.Codes());
    }

    [Fact]
    public void A_clean_cart_has_nothing_to_say()
    {
        var bench = Bench(128 * K);
        bench.Assemble();
        Assert.Empty(bench.Codes());
    }

    [Property(MaxTest = 50)]
    public void A_flipped_bit_is_seen_by_the_checksum(int place, byte bit)
    {
        var rom = Bench(128 * K).Assemble().Bytes("rom").ToArray();
        rom[(place & int.MaxValue) % (rom.Length - 2)] ^= (byte)(1 << (bit % 8));
        Assert.Equal(Certainty.Exact, new SwanPlatform().Recognise(Bench(128 * K).Assemble().Bytes("rom"))!.Certainty);
        Assert.False(HeaderReader.Read(SwanHeader.Table, rom, new HeaderContext(null, null, _ => rom.Length))!.Checksums[0].Right);
    }

    [Property(MaxTest = 100)]
    public void What_a_reader_finds_builds_the_same_ROM(byte developer, byte id, byte version, bool color, byte save)
    {
        var bench = Bench(128 * K).Header("developer", $"0x{developer:X2}").Header("gameId", $"0x{id:X2}").Header("version", $"{version % 128}")
            .Header("console", color ? "color" : "mono").Header("save", $"0x{save:X2}");
        var first = bench.TryAssemble()!.Bytes("rom").ToArray();
        var again = Bench(128 * K);
        foreach (var entry in HeaderReader.Read(SwanHeader.Table, first, new HeaderContext(null, null, _ => first.Length))!.Entries)
            again.Header(entry.Field.Name, entry.Text);

        Assert.Equal(first, again.TryAssemble()!.Bytes("rom").ToArray());
    }

    [Theory]
    [InlineData("$FFFFF", -1)]
    [InlineData("$F0000", -0x10000)]
    [InlineData("FF:0000", -0x10000)]
    [InlineData("FE:1234", -0x1EDCC)]
    public void Addresses_count_from_the_end(string text, long offset) => Assert.Equal(offset, Locate(text).Offset);

    [Theory]
    [InlineData("$00000", "internal RAM")]
    [InlineData("$10000", "cartridge RAM")]
    [InlineData("$20000", "bank")]
    [InlineData("$100000", "20 bits")]
    [InlineData("100:0000", "last one")]
    [InlineData("FF:10000", "64 KiB")]
    public void Addresses_elsewhere(string text, string words) => Assert.Contains(words, Locate(text).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_program_placed_by_address_lies_there_whatever_the_size()
    {
        foreach (var size in (int[])[128 * K, 512 * K])
        {
            var rom = new RomBench(new SwanPlatform()).Program("rom", -0x10000, TestBytes.L(0x200)).Size("rom", size).Header("entry", "EA000000F0").Assemble().Bytes("rom");
            Assert.Equal(TestBytes.L(0x200), rom.Slice(size - 0x10000, 0x200));
        }
    }

    [Fact]
    public void Images_are_recognised_by_their_footer()
    {
        var rom = Bench(128 * K).Assemble().Bytes("rom").ToArray();
        Assert.Equal(Certainty.Exact, new SwanPlatform().Recognise(rom)!.Certainty);
        rom[^1] ^= 0xFF;
        Assert.Equal(Certainty.Structural, new SwanPlatform().Recognise(rom)!.Certainty);
        Assert.Null(new SwanPlatform().Recognise(rom.AsSpan(1)));
        var random = new Random(1);
        for (var i = 0; i < 40; i++)
        {
            random.NextBytes(rom);
            Assert.Null(new SwanPlatform().Recognise(rom));
        }
    }

    private static RomBench Color(byte[] program) => new RomBench(new SwanPlatform()).Program("rom", 0, program).Keep(false)
        .Header("entry", "EA000000E0").Header("console", "color").Header("gameId", "0x42").Header("save", "sram-32KiB");

    private static RomBench Bench(int size)
    {
        var program = TestBytes.L(size);
        program.AsSpan(size - 0x10).Clear();
        return new RomBench(new SwanPlatform()).Program("rom", 0, program).Size("rom", size).Header("entry", "EA000000F0");
    }

    private static AddressPlace Locate(string text) =>
        ConsoleAddress.TryParse(text, out var address) ? new SwanAddresses().Locate(address, _ => null) : throw new ArgumentException(text);
}
