using Cartwright.Findings;
using Cartwright.Platforms.Nes;
using Xunit;
using static Cartwright.Tests.Platforms.Nes.NesCart;

namespace Cartwright.Tests.Platforms.Nes;

/// <summary>Which generation a header is of. Source: NESdev Wiki, INES, "Variant comparison"; sizes of the examples as real homebrew images have them.</summary>
public sealed class ImageMapTests
{
    private const string Sixteen = "4E 45 53 1A 02 01 00 00 00 00 00 00 00 00 00 00";

    [Theory]
    [InlineData("4E 45 53 1A 02 01 01 00 00 00 00 00 00 00 00 00", 40976, NesGeneration.INes)]
    [InlineData("4E 45 53 1A 20 00 E3 18 00 00 00 09 00 00 00 01", 524304, NesGeneration.Nes2)]
    [InlineData("4E 45 53 1A 10 10 12 08 00 00 70 00 00 00 00 01", 393232, NesGeneration.Nes2)]
    [InlineData("4E 45 53 1A 20 00 FA 68 00 00 00 08 00 00 00 01", 524304, NesGeneration.Nes2)]
    [InlineData("4E 45 53 1A 02 00 A0 D8 00 00 00 00 00 00 00 01", 32784, NesGeneration.Nes2)]
    [InlineData("4E 45 53 1A 36 01 40 08 00 0F 00 00 00 00 00 00", 49168, NesGeneration.Nes2)]
    public void Whole_images(string header, long length, NesGeneration generation)
    {
        var map = NesImageMap.Read(Bytes(header), length)!;
        Assert.Equal(generation, map.Generation);
        Assert.Equal(0, map.Trailing);
        Assert.Empty(Said(header, length));
    }

    [Fact]
    public void A_tag_in_bytes_8_to_13()
    {
        var header = "4E 45 53 1A 02 01 00 00 51 55 49 4C 4C 4D 00 00";
        var map = NesImageMap.Read(Bytes(header), 40976)!;
        Assert.Equal(new NesImageMap(NesGeneration.Damaged, 0, 32 * K, 8 * K, 0, 0), map);
        Assert.Equal("nrom", Read(map.Table, Bytes(header))["mapper"]);
        Assert.Equal(["CW4134"], Said(header, 40976));
    }

    [Fact]
    public void A_half_bank_of_chr_the_header_does_not_claim()
    {
        var header = "4E 45 53 1A 01 01 01 00 00 00 00 00 00 00 00 00";
        Assert.Equal(new NesImageMap(NesGeneration.INes, 0, 16 * K, 8 * K, 0, 4096), NesImageMap.Read(Bytes(header), 28688));
        Assert.Equal(["CW4132"], Said(header, 28688));
    }

    [Theory]
    // The mark of NES 2.0, and sizes the file cannot hold.
    [InlineData("4E 45 53 1A 02 01 00 08 00 11 00 00 00 00 00 00", NesGeneration.Damaged)]
    [InlineData("4E 45 53 1A 02 01 00 04 00 00 00 00 00 00 00 00", NesGeneration.Archaic)]
    [InlineData("4E 45 53 1A 02 01 00 0C 00 00 00 00 00 00 00 00", NesGeneration.Damaged)]
    [InlineData("4E 45 53 1A 02 01 00 00 00 00 00 00 51 55 49 4C", NesGeneration.Damaged)]
    [InlineData("4E 45 53 1A 02 01 00 00 51 55 00 00 00 00 00 00", NesGeneration.Damaged)]
    [InlineData("4E 45 53 1A 02 01 00 00 51 00 00 00 00 00 00 00", NesGeneration.INes)]
    // A personal tag that begins in byte 7 with a D would add 64 to the mapper number.
    [InlineData("4E 45 53 1A 02 01 00 44 51 55 49 4C 4C 4D 4F 52", NesGeneration.Archaic)]
    public void Damaged_and_archaic_headers(string header, NesGeneration generation)
    {
        var map = NesImageMap.Read(Bytes(header), 40976)!;
        Assert.Equal(generation, map.Generation);
        Assert.Equal((32L * K, 8L * K), (map.Prg, map.Chr));
        Assert.Equal(generation == NesGeneration.INes ? "CW4135" : "CW4134", Said(header, 40976).Last());
    }

    [Fact]
    public void Exponents_past_any_memory_make_a_damaged_header()
    {
        var map = NesImageMap.Read(Bytes("4E 45 53 1A FF FF 00 08 00 FF 00 00 00 00 00 00"), 40976)!;
        Assert.Equal((NesGeneration.Damaged, 255L * 16 * K), (map.Generation, map.Prg));
    }

    [Fact]
    public void A_ram_code_of_nes_2_without_its_mark() =>
        Assert.Equal(["CW4135"], Said("4E 45 53 1A 02 01 00 00 00 00 07 00 00 00 00 00", 40976));

    [Theory]
    [InlineData(40976 + 127, "CW4133")]
    [InlineData(40976 + 128, "CW4133")]
    [InlineData(40976 + 129, "CW4132")]
    [InlineData(40975, "CW4131")]
    [InlineData(16, "CW4131")]
    public void More_and_less_than_the_header_says(long length, string code) => Assert.Equal([code], Said(Sixteen, length));

    [Theory]
    [InlineData("4E 45 53 1A 02 01 04 00 00 00 00 00 00 00 00 00", 512, 0)]
    [InlineData("4E 45 53 1A 02 01 00 02 00 00 00 00 00 00 00 00", 8192, 8192)]
    [InlineData("4E 45 53 1A 02 01 00 02 00 00 00 00 00 00 00 00", 8224, 8224)]
    [InlineData("4E 45 53 1A 02 01 00 02 00 00 00 00 00 00 00 00", 0, 0)]
    [InlineData("4E 45 53 1A 02 01 00 08 00 00 00 00 00 00 01 00", 999, 999)]
    public void Trainers_and_further_roms(string header, long more, long further)
    {
        var map = NesImageMap.Read(Bytes(header), 40976 + more)!;
        Assert.Equal(0, map.Trailing);
        Assert.Equal(further, map.Further);
        Assert.Equal(16 + map.Trainer + (32 * K), map.ChrStart);
    }

    [Fact]
    public void What_is_no_container()
    {
        Assert.Null(NesImageMap.Read([]));
        Assert.Null(NesImageMap.Read(Bytes(Sixteen).AsSpan(0, 15)));
        Assert.Null(NesImageMap.Read(TestBytes.L(100)));
    }

    [Fact]
    public void Every_header_of_any_bytes_is_read()
    {
        var random = new Random(1);
        for (var run = 0; run < 2000; run++)
        {
            var bytes = new byte[16];
            random.NextBytes(bytes);
            "NES\x1A"u8.CopyTo(bytes);
            var map = NesImageMap.Read(bytes, random.Next(1 << 22))!;
            Assert.NotNull(Read(map.Table, bytes)["mapper"]);
            map.Check(bytes, SourcePlace.None, new FindingLog());
        }
    }

    private static IEnumerable<string> Said(string header, long length)
    {
        var log = new FindingLog();
        NesImageMap.Read(Bytes(header), length)!.Check(Bytes(header), SourcePlace.None, log);
        return log.ToSorted().Select(finding => finding.Code);
    }
}
