using System.Buffers.Binary;
using Cartwright.Checksums;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Platforms;
using Cartwright.Platforms.MegaDrive;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms.MegaDrive;

/// <summary>Each finding, raised by the bytes that deserve it.</summary>
public sealed class FindingTests
{
    [Fact]
    public void A_clean_cart_has_no_findings()
    {
        var bench = MegaDriveBench.Bench(MegaDriveBench.Program(0x4000)).Header("saveMemory", "8KiB battery odd");
        bench.Assemble();
        Assert.Empty(bench.Codes());
    }

    [Fact]
    public void A_finished_program_builds_again_without_a_finding()
    {
        var bench = MegaDriveBench.Bench(MegaDriveBench.Finished(0x4000)).Size("rom", 0x4000);
        bench.Assemble();
        Assert.Empty(bench.Codes());
    }

    [Fact]
    public void Codes_are_in_the_platforms_range_and_in_order()
    {
        var codes = MegaDriveFindings.All.Select(rule => rule.Code).ToList();
        Assert.Equal(Enumerable.Range(4230, codes.Count).Select(number => $"CW{number}"), codes);
        Assert.True(codes.Count <= 40);
    }

    [Fact]
    public void Vectors_no_program_covers()
    {
        var bench = new RomBench(MegaDriveBench.Platform).Program("rom", 0x200, TestBytes.L(0x200)).Header("copyright", MegaDriveBench.Copyright);
        bench.TryAssemble();
        Assert.Equal(["CW4230"], bench.Codes());

        bench = new RomBench(MegaDriveBench.Platform).Program("rom", 0, new byte[6]).Header("copyright", MegaDriveBench.Copyright);
        bench.TryAssemble();
        Assert.Equal(["CW4230"], bench.Codes());
    }

    // Entry and stack: "Genesis vector and header table".
    [Theory]
    [InlineData(0x00000201, "CW4231")]
    [InlineData(0x00020000, "CW4231")]
    [InlineData(0x00FF0000, "CW4231")]
    [InlineData(0x000001FE, "CW4232")]
    [InlineData(0x00000000, "CW4232")]
    [InlineData(0x0001FFFE, null)]
    [InlineData(0xFF000200, null)]
    public void Entries(uint entry, string? code) => AssertOnly(code, MegaDriveBench.Bench(MegaDriveBench.Program(0x400, entry: entry)));

    [Theory]
    [InlineData(0x00000000, null)]
    [InlineData(0x01000000, null)]
    [InlineData(0xE1000000, null)]
    [InlineData(0x00FFFE00, null)]
    [InlineData(0xFFFFFE00, null)]
    [InlineData(0x00FFFFFF, "CW4233")]
    [InlineData(0x00200000, "CW4233")]
    public void Stacks(uint stack, string? code) => AssertOnly(code, MegaDriveBench.Bench(MegaDriveBench.Program(0x400, stack)));

    // The lock compares the first letters: "ROM header reference".
    [Theory]
    [InlineData("QUILLMOOR", "CW4234")]
    [InlineData("  SEGA", "CW4234")]
    [InlineData("SEGA LANTERN", "CW4235")]
    [InlineData(" SEGA MEGA DRIVE", null)]
    [InlineData("SEGA GENESIS", null)]
    [InlineData("SEGA 32X", null)]
    public void System_types(string text, string? code) => AssertOnly(code, MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Header("systemType", text));

    // Forms as in "Genesis format table"; the faults are those seen in images.
    [Theory]
    [InlineData("(C)T-25 1991.JAN", false)]
    [InlineData("(C)T-1231991.JAN", false)]
    [InlineData("", true)]
    [InlineData("QUIL 2026.JAN", true)]
    [InlineData("(C)QUIL 2026", true)]
    [InlineData("(C)QUIL 20XX.XXX", true)]
    [InlineData("(C)QUIL 2026.APL", true)]
    [InlineData("(C)QUIL 2026-JAN", true)]
    [InlineData("(C)QUILL2026.JAN", true)]
    [InlineData("(C)QUI  2026.JAN", true)]
    public void Copyrights(string text, bool odd) => AssertOnly(odd ? "CW4236" : null, MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Header("copyright", text));

    [Fact]
    public void Without_a_copyright_spaces_are_written()
    {
        var bench = new RomBench(MegaDriveBench.Platform).Program("rom", 0, MegaDriveBench.Program(0x400));
        var cart = bench.Assemble();
        Assert.Equal(["CW4236"], bench.Codes());
        Assert.Equal(TestBytes.All((byte)' ', 16), cart.Bytes("rom").Slice(0x110, 16).ToArray());
    }

    [Theory]
    [InlineData("serial", "GM T-12345", false)]
    [InlineData("serial", "A1 00000000", false)]
    [InlineData("serial", "XXXXXXXXXXX", true)]
    [InlineData("serial", "LANTERN", true)]
    [InlineData("revision", "raw rev", true)]
    public void Serials(string field, string text, bool odd) => AssertOnly(odd ? "CW4237" : null, MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Header(field, text));

    [Theory]
    [InlineData("raw USA", true)]
    [InlineData("hex 042020", true)]
    [InlineData("", true)]
    [InlineData("UJ", false)]
    [InlineData("8", false)]
    public void Regions(string text, bool odd) => AssertOnly(odd ? "CW4239" : null, MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Header("region", text));

    [Fact]
    public void Texts_filled_with_zeros() => AssertOnly("CW4238", MegaDriveBench.Kept(0x12C, [.. new byte[36]]), "CW4008");

    [Theory]
    [InlineData(0x000FFFFF, "CW4240")]
    [InlineData(0x00100000, "CW4240")]
    [InlineData(0x00020000, "CW4241")]
    public void Ends_that_are_kept(uint end, string code)
    {
        var bench = MegaDriveBench.Kept(0x1A4, BigEndian(end));
        AssertOnly(code, bench, "CW4007");
    }

    [Fact]
    public void An_end_inside_the_image_is_only_told_as_kept()
    {
        var bench = MegaDriveBench.Kept(0x1A4, BigEndian(0xFFFF)).Keep(true);
        var cart = bench.Assemble();
        Assert.Equal(["CW4006", "CW4007"], bench.Codes());
        Assert.True(cart.Headers[0].Checksums[0].Right);
    }

    [Theory]
    [InlineData(0xFFFF0000, false)]
    [InlineData(0xE0FF0000, false)]
    [InlineData(0x00FF8000, true)]
    public void Ram_ranges(uint start, bool odd) => AssertOnly(odd ? "CW4242" : null, MegaDriveBench.Kept(0x1A8, BigEndian(start)));

    [Fact]
    public void A_kept_exclusive_or_is_named()
    {
        var program = MegaDriveBench.Finished(0x20000);
        program.AsSpan(0x18E, 2).Clear();
        var xor = WordXor.BigEndian16(program);
        var bench = MegaDriveBench.Kept(0x18E, (byte)(xor >> 8), (byte)xor);
        AssertOnly("CW4243", bench, "CW4007");
        Assert.Contains(bench.Log.ToSorted(), finding => finding.Message.Contains("exclusive or", StringComparison.Ordinal));
    }

    [Fact]
    public void A_kept_sum_to_the_end_of_the_image_is_named()
    {
        // The sum covers all 128 KiB, and the end is moved back behind it.
        var bench = MegaDriveBench.Kept(0x1A4, BigEndian(0xFFFF));
        AssertOnly("CW4243", bench, "CW4007", "CW4007");
        Assert.Contains(bench.Log.ToSorted(), finding => finding.Message.Contains("instead of to `romEnd`", StringComparison.Ordinal));
    }

    [Fact]
    public void A_kept_checksum_with_its_bytes_exchanged_is_named()
    {
        var sum = MegaDriveBench.Finished(0x20000).AsSpan(0x18E, 2).ToArray();
        AssertOnly("CW4245", MegaDriveBench.Kept(0x18E, sum[1], sum[0]), "CW4007");
    }

    [Fact]
    public void A_stale_checksum_is_only_told_as_kept() => AssertOnly(null, MegaDriveBench.Kept(0x18E, 0x12, 0x35), "CW4007");

    [Fact]
    public void A_checksum_never_filled_in_shows_in_an_image_that_is_read()
    {
        var image = MegaDriveBench.Finished(0x20000);
        image.AsSpan(0x18E, 2).Clear();
        Assert.Equal(["CW4244"], ReadCodes(image));
    }

    // Blocks as seen in images.
    [Theory]
    [InlineData("5241F820 00200000 0020FFFF", "CW4246")]
    [InlineData("5241F820 00200000 002001FF", "CW4246")]
    [InlineData("5241F020 00200000 00203FFF", "CW4246")]
    [InlineData("5241E020 00380000 003FFFFF", null)]
    [InlineData("5241F820 00400001 00403FFF", "CW4247")]
    [InlineData("5241F820 00203FFF 00200001", "CW4247")]
    [InlineData("20200000 00200000 002001FF", "CW4248")]
    [InlineData("2020F820 00200001 00203FFF", "CW4248")]
    [InlineData("5241FF20 00200001 00203FFF", "CW4248")]
    [InlineData("464C0020 003D0000 003EFFFF", "CW4250")]
    [InlineData("464C0020 00010000 0001FFFF", "CW4251")]
    public void Save_memory_blocks(string digits, string? code) =>
        AssertOnly(code, MegaDriveBench.Kept(0x1B0, MegaDriveBench.Hex(digits)));

    [Fact]
    public void A_lane_is_forced_right_when_it_is_stated_in_words() =>
        AssertOnly(null, MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Header("saveMemory", "32KiB battery odd at $200000"));

    [Fact]
    public void Flash_sectors_in_the_fill_are_erased() =>
        AssertOnly("CW4250", MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Header("saveMemory", "64KiB flash at $10000"));

    [Fact]
    public void Flash_sectors_under_another_fill_are_not() =>
        AssertOnly("CW4251", MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Size("rom", null, 0).Header("saveMemory", "64KiB flash at $10000"));

    [Theory]
    [InlineData(0x200000, "8KiB battery odd", null)]
    [InlineData(0x200000, "8KiB battery even", null)]
    [InlineData(0x200002, "8KiB battery even", "CW4249")]
    [InlineData(0x400000, "8KiB battery odd", "CW4249")]
    [InlineData(0x300000, "64KiB volatile word", "CW4249")]
    [InlineData(0x300000, "512KiB battery word at $380000", null)]
    [InlineData(0x400000, "eeprom", null)]
    public void Save_memory_over_the_rom(long size, string save, string? code) =>
        AssertOnly(code, MegaDriveBench.Bench(MegaDriveBench.Program(0x400)).Size("rom", size).Header("saveMemory", save));

    [Fact]
    public void A_large_rom_asks_for_the_page_mapper()
    {
        var program = MegaDriveBench.Program(0x400);
        AssertOnly("CW4253", MegaDriveBench.Bench(program).Header("mapper", "pages").Size("rom", 0x500000));
        AssertOnly("CW4252", MegaDriveBench.Bench(program).Header("mapper", "pages").Header("systemType", "SEGA GENESIS").Size("rom", 0x500000), "CW4253");
        AssertOnly(null, MegaDriveBench.Bench(program).Header("mapper", "pages").Size("rom", 0x400000));
    }

    [Fact]
    public void A_program_of_odd_length()
    {
        var bench = MegaDriveBench.Bench([.. MegaDriveBench.Program(0x400), 0x4E]);
        AssertOnly("CW4258", bench);
    }

    private static byte[] BigEndian(uint value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(bytes, value);
        return bytes;
    }

    private static IEnumerable<string> ReadCodes(byte[] image)
    {
        var layout = MegaDriveBench.Platform.Layouts[0];
        var region = new RegionImage("rom", image, 0xFF, [new PlacedSegment("rom", 0, image, "read.md", SourcePlace.At("read.md", 0))]);
        var header = HeaderReader.Read(layout.Headers[0], image, new HeaderContext(null, null, _ => image.Length))!;
        var log = new FindingLog();
        MegaDriveBench.Platform.Check(new CartView(layout, new Rom([region]), [header], key => new SourcePlace("read.md", Key: key)), log);
        return log.ToSorted().Select(finding => finding.Code);
    }

    private static void AssertOnly(string? code, RomBench bench, params string[] besides)
    {
        bench.TryAssemble();
        string[] expected = code is null ? besides : [.. besides, code];
        Assert.Equal(expected.Order(StringComparer.Ordinal), bench.Codes());
        Assert.All(bench.Log.ToSorted().Where(finding => finding.Code == code), finding => Assert.NotEqual(SourcePlace.None, finding.Place));
    }
}
