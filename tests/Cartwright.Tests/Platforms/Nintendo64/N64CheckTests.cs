using System.Buffers.Binary;
using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.Nintendo64;
using Cartwright.Roms;
using Xunit;
using static Cartwright.Tests.Platforms.Nintendo64.CheckWordsTests;

namespace Cartwright.Tests.Platforms.Nintendo64;

public sealed class N64CheckTests
{
    [Fact]
    public void Codes_are_in_order() =>
        Assert.Equal(Enumerable.Range(4270, N64Findings.All.Length).Select(number => $"CW{number}"), N64Findings.All.Select(rule => rule.Code));

    [Fact]
    public void No_boot_code()
    {
        var bench = new RomBench(new N64Platform()).Program("rom", 0x1000, TestBytes.L(0x100)).Header("entry", "0x80000400");
        Only("CW4270", bench);
        Assert.Contains("bootCode", Assert.Single(bench.Log.ToSorted()).Rule.Remedy, StringComparison.Ordinal);
        Only("CW4270", new RomBench(new N64Platform()).Program("rom", 0x1000, TestBytes.L(0x100)).Size("rom", 0x10000));
        Only("CW4270", new RomBench(new N64Platform()).Program("rom", 0, new byte[0x2000]).Header("entry", "0x80000400"));
    }

    [Fact]
    public void A_boot_code_with_one_byte_changed()
    {
        var code = N64Bench.Forged(BootChips.Usual);
        code[0x200] ^= 1;
        Only("CW4271", With(code));
        Only("CW4271", With(code).Header("bootChip", "6102"));
        Only("CW4271", With(code).Header("bootChip", "open"));
        Only("CW4272", With(code).Header("bootChip", "none"));
    }

    [Theory]
    [InlineData("6103")]
    [InlineData("7102")]
    [InlineData("open")]
    [InlineData("none")]
    public void A_boot_code_for_another_chip(string stated) => Only("CW4273", N64Bench.Bench().Header("bootChip", stated));

    [Fact]
    public void An_open_boot_code_needs_neither_words_nor_size()
    {
        var bench = N64Bench.Open();
        var cart = bench.Assemble();
        Assert.Equal(["CW4274"], bench.Codes());
        Assert.Equal("open", cart.Layout.Variant);
        Assert.Equal(0x1D00 + 0x108, cart.Bytes("rom").Length);
        Assert.Equal("80371240000000000000000000000000" + "0000000000000000", Convert.ToHexString(cart.Bytes("rom")[..0x18]));
        Assert.Empty(cart.Headers[0].Checksums);
    }

    [Fact]
    public void For_loaders_that_insist_an_open_boot_code_gets_the_words_of_the_stated_chip()
    {
        var bench = N64Bench.Open().Header("bootChip", "6102").Header("entry", "0x80000400");
        var cart = bench.Assemble();
        Assert.Equal(["CW4274"], bench.Codes());
        Assert.Equal(2 << 20, cart.Bytes("rom").Length);
        Assert.Equal(CheckWords.Compute(cart.Bytes("rom"), BootChips.Usual), Assert.Single(cart.Headers[0].Checksums).Stored);
    }

    [Fact]
    public void An_open_boot_code_looks_for_its_program_on_borders_of_256_bytes()
    {
        var bench = N64Bench.Open(0x1D04);
        bench.Assemble();
        Assert.Equal(["CW4274", "CW4278"], bench.Codes());
    }

    [Fact]
    public void No_program_behind_a_stock_boot_code() =>
        Only("CW4275", new RomBench(new N64Platform()).Program("rom", 0x40, N64Bench.Forged(BootChips.Usual)).Program("rom", 0x2000, TestBytes.L(0x100)).Header("entry", "0x80000400"));

    [Theory]
    [InlineData("6102", "0x80000402")]
    [InlineData("6102", "0x80800000")]
    [InlineData("6102", "0x00000400")]
    [InlineData("6102", "0xB0001000")]
    [InlineData("6103", "0x7FF00400")]
    public void An_entry_outside_RAM(string chip, string entry) => Only("CW4276", N64Bench.Bench(Chip(chip)).Header("entry", entry));

    [Theory]
    [InlineData("0xA0000400")]
    [InlineData("0x80700000")]
    public void An_entry_in_RAM(string entry) => Only(null, N64Bench.Bench().Header("entry", entry));

    // A program of its own header that forgot what its boot code takes off.
    [Fact]
    public void An_entry_of_the_program_that_is_not_raised()
    {
        var image = N64Bench.Bench(Chip("6106")).Assemble().Bytes("rom").ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(image.AsSpan(8), 0x80000400);
        var bench = new RomBench(new N64Platform()).Program("rom", 0, image).Keep(true);
        Only("CW4276", bench);
        Assert.Contains("$7FE00400", Assert.Single(bench.Log.ToSorted()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_entry_that_is_not_read() => Only("CW4277", N64Bench.Bench(Chip("7102")).Header("entry", "0x80000400"));

    [Theory]
    [InlineData(0x00, "0x00")]
    [InlineData(0xFF, "0xFF")]
    public void An_image_that_ends_inside_the_sum(byte fill, string word)
    {
        var whole = new RomBench(new N64Platform()).Program("rom", 0x40, N64Bench.Forged(BootChips.Usual)).Program("rom", 0x1000, TestBytes.L(0x1000))
            .Size("rom", N64Bench.Size, fill).Header("entry", "0x80000400").Assemble().Bytes("rom");
        var finding = Assert.Single(ReadFindings(whole[..0x2000].ToArray()));
        Assert.Equal("CW4279", finding.Code);
        Assert.Contains($"filled up with {word}", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_small_a_size_cannot_be_stated()
    {
        var bench = N64Bench.Bench().Size("rom", 1 << 20);
        bench.TryAssemble();
        Assert.Equal(["CW3004"], bench.Codes());
        Assert.Contains("0x101000", Assert.Single(bench.Log.ToSorted()).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_that_runs_on() => Only("CW4280", N64Bench.Bench().Header("titleEnd", "AND MORE"[..7]));

    [Fact]
    public void Spaces_behind_the_title_say_nothing() => Only(null, N64Bench.Bench().Header("titleEnd", "       "));

    [Theory]
    [InlineData("controller4", "0x42")]
    [InlineData("saveMemory", "0x07")]
    [InlineData("reserved3F", "0x01")]
    [InlineData("reserved38", "000100")]
    public void Values_the_extension_does_not_have(string field, string value) => Only("CW4281", N64Bench.Bench().Header("regionFree", "true").Header(field, value));

    [Theory]
    [InlineData("6102", "europe", "CW4282")]
    [InlineData("7101", "north-america", "CW4282")]
    [InlineData("7101", "europe", null)]
    [InlineData("6102", "japan", null)]
    [InlineData("6102", "all", null)]
    [InlineData("auto", "europe", null)]
    public void Chip_and_destination(string chip, string destination, string? code) =>
        Only(code, N64Bench.Bench().Header("bootChip", chip).Header("destination", destination));

    [Fact]
    public void Kept_words_that_are_wrong_are_told()
    {
        var image = N64Bench.Bench().Assemble().Bytes("rom").ToArray();
        image[0x13] ^= 1;
        Only("CW4007", new RomBench(new N64Platform()).Program("rom", 0, image).Keep(null, "checkValue"));
        Only("CW4006", new RomBench(new N64Platform()).Program("rom", 0, image));
    }

    [Fact]
    public void A_finished_image_builds_again_without_a_finding()
    {
        foreach (var chip in BootChips.All)
        {
            var image = N64Bench.Bench(chip).Header("saveMemory", "flash-128KiB").Assemble().Bytes("rom").ToArray();
            var bench = new RomBench(new N64Platform()).Program("rom", 0, image);
            Assert.Equal(image, bench.Assemble().Bytes("rom").ToArray());
            Assert.Empty(bench.Codes());
        }
    }

    private static RomBench With(byte[] code) => new RomBench(new N64Platform()).Program("rom", 0x40, code).Program("rom", 0x1000, TestBytes.L(0x100)).Header("entry", "0x80000400");

    private static ImmutableArray<Finding> ReadFindings(byte[] image)
    {
        var platform = new N64Platform();
        var layout = platform.Layouts.Single(layout => layout.Variant == BootChips.Usual.Name);
        var region = new RegionImage("rom", image, 0xFF, [new PlacedSegment("rom", 0, image, "read.z64", SourcePlace.At("read.z64", 0))]);
        var header = HeaderReader.Read(layout.Headers[0], image, new HeaderContext(null, null, _ => image.Length))!;
        var log = new FindingLog();
        platform.Check(new CartView(layout, new Rom([region]), [header], key => new SourcePlace("read.z64", Key: key)), log);
        return log.ToSorted();
    }

    private static void Only(string? code, RomBench bench)
    {
        bench.TryAssemble();
        Assert.Equal(code is null ? [] : [code], bench.Codes());
    }
}
