using Cartwright.Boards;
using Cartwright.Manifests;
using Cartwright.Tests.Boards;
using Xunit;

namespace Cartwright.Tests.Images;

public sealed class ChipImageTests
{
    private const string OddEven = "\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"lane\": \"high\" }, { \"site\": \"U2\", \"lane\": \"low\" } ]";

    // Worked values of two independent programs over the first 0x20000 bytes of the test generator.
    [Theory]
    [InlineData("md-single-16bit", "bus", "662B121A")]
    [InlineData("md-single-16bit", "programmer", "E9A75972")]
    [InlineData("md-double-8bit", "bus", "B9764406 D26E0F4C")]
    [InlineData("md-double-8bit", "programmer", "B9764406 D26E0F4C")]
    public void The_worked_images_are_cut_as_worked(string board, string order, string crcs)
    {
        var chips = new BoardBench($"\"use\": \"{board}\"", $"\"wordOrder\": \"{order}\"").Chips(BoardBench.Region(TestBytes.L(0x20000)));
        Assert.Equal(crcs, string.Join(' ', chips.Select(chip => TestBytes.Crc(chip.Bytes.Span))));
    }

    [Theory]
    [InlineData("big-endian", "00020406", "01030507")]
    [InlineData("little-endian", "01030507", "00020406")]
    public void The_byte_order_says_which_chip_has_the_even_bytes(string order, string high, string low)
    {
        var chips = new BoardBench($"\"byteOrder\": \"{order}\", {OddEven}").Chips(BoardBench.Region([0, 1, 2, 3, 4, 5, 6, 7]));
        Assert.Equal((high, low), (Hex(chips[0]), Hex(chips[1])));
    }

    [Theory]
    [InlineData("big-endian", "bus", "00010203", 0x0001, "0001")]
    [InlineData("big-endian", "programmer", "01000302", 0x0001, "0001")]
    [InlineData("little-endian", "bus", "00010203", 0x0100, "0100")]
    [InlineData("little-endian", "programmer", "00010203", 0x0100, "0100")]
    public void A_16_bit_chip_shows_the_same_word_in_either_order_of_its_file(string order, string wordOrder, string file, int word, string text)
    {
        var bench = new BoardBench($"\"byteOrder\": \"{order}\", \"busWidth\": 16, \"sites\": [ {{ \"site\": \"U1\", \"width\": 16 }} ]", $"\"wordOrder\": \"{wordOrder}\"");
        var chip = Assert.Single(bench.Chips(BoardBench.Region([0, 1, 2, 3])));
        Assert.Equal((file, word, text, 2), (Hex(chip), chip.Word(0), chip.WordText(0), chip.WordCount));
    }

    [Fact]
    public void A_chip_s_own_word_order_goes_before_the_common_one()
    {
        var bench = new BoardBench("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16 } ], \"chips\": { \"u1\": { \"wordOrder\": \"programmer\" } }", "\"wordOrder\": \"bus\"");
        var chip = Assert.Single(bench.Chips(BoardBench.Region([0, 1, 2, 3])));
        Assert.Equal(("01000302", WordOrder.Programmer), (Hex(chip), chip.WordOrder));
    }

    // Three of four units show as 0 1 2 2: SNESdev Wiki, ROM header; for other consoles common practice.
    [Theory]
    [InlineData("erased", "010203FFFFFFFFFF")]
    [InlineData("repeat", "0102030301020303")]
    [InlineData("top", "FFFFFFFFFF010203")]
    public void A_larger_chip_is_filled_as_its_site_says(string fill, string file)
    {
        var chip = Assert.Single(BoardBench.One($", \"fill\": \"{fill}\"", "\"U1\": { \"capacity\": 8 }").Chips(BoardBench.Region([1, 2, 3])));
        Assert.Equal((file, 3, 8), (Hex(chip), chip.ContentLength, chip.Capacity));
    }

    [Fact]
    public void Two_chips_in_sequence_share_the_region()
    {
        var bench = new BoardBench("\"sites\": [ { \"site\": \"U2\", \"start\": 4 }, { \"site\": \"U1\", \"length\": 4 } ]");
        var chips = bench.Chips(BoardBench.Region([0, 1, 2, 3, 4, 5]));
        Assert.Equal([("U2", "0405"), ("U1", "00010203")], chips.Select(chip => (chip.Site.Name, Hex(chip))));
    }

    [Fact]
    public void Each_region_goes_to_its_own_chips()
    {
        var bench = new BoardBench("\"sites\": [ { \"site\": \"U1\", \"region\": \"PRG\" }, { \"site\": \"U2\", \"region\": \"chr\" } ]");
        var chips = bench.Chips(BoardBench.Region([1, 2], "prg"), BoardBench.Region([3], "chr"));
        Assert.Equal(["0102", "03"], chips.Select(Hex));
    }

    [Fact]
    public void A_chip_that_holds_the_region_as_it_is_copies_nothing()
    {
        var region = BoardBench.Region(new byte[64]);
        Assert.Equal(region.Bytes, Assert.Single(BoardBench.One().Chips(region)).Bytes);
    }

    [Theory]
    [InlineData(3, "", 4, "CW5010")]
    [InlineData(3, "\"capacity\": 16", 16, "CW5010")]
    [InlineData(0x1800, "\"part\": \"M27C64A\"", 0x2000, "CW5507 CW5508")]
    [InlineData(0x1800, "\"part\": \"M27C64A\", \"capacity\": \"8KiB\"", 0x2000, "CW5507 CW5508")]
    [InlineData(0x1800, "\"part\": \"Z99X\", \"capacity\": \"16KiB\"", 0x4000, "CW5012")]
    [InlineData(0x2800, "\"part\": \"Am27C64\"", 0x4000, "CW5502 CW5507 CW5508 CW5513")]
    [InlineData(0x1800, "\"part\": \"M27C64A\", \"capacity\": \"16KiB\"", 0x2000, "CW5014 CW5507 CW5508")]
    [InlineData(0x1800, "\"part\": \"M27C64\", \"capacity\": \"16KiB\"", 0x4000, "CW5012")]
    public void The_file_is_as_long_as_the_chip_is_large(int length, string chip, int capacity, string codes)
    {
        var bench = BoardBench.One(chips: $"\"U1\": {{ {chip} }}");
        Assert.Equal(capacity, Assert.Single(bench.Chips(BoardBench.Region(new byte[length]))).Capacity);
        Assert.Equal(codes, string.Join(' ', bench.Codes.Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("\"part\": \"M27C64A\"", "CW5512")]
    [InlineData("\"capacity\": \"8KiB\"", "CW5512")]
    [InlineData("\"part\": \"SST39SF04\"", "CW5501")]
    [InlineData("\"capacity\": \"1GiB\"", "CW5014")]
    [InlineData("\"part\": \"Z99X\", \"capacity\": \"1GiB\"", "CW5014")]
    [InlineData("\"capacity\": \"1073741824GiB\"", "CW5014")]
    public void A_chip_that_cannot_hold_its_share_is_an_error(string chip, string code)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var bench = BoardBench.One(chips: $"\"U1\": {{ {chip} }}");
        bench.Chips(BoardBench.Region(new byte[0x2001]));
        Assert.Contains(code, bench.Codes);
        Assert.True(bench.Log.HasErrors);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 64 << 20);
    }

    [Fact]
    public void A_16_bit_chip_has_whole_words()
    {
        var bench = new BoardBench("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"width\": 16 } ], \"chips\": { \"U1\": { \"capacity\": 9 } }");
        bench.Chips(BoardBench.Region(new byte[4]));
        Assert.Contains(BoardFindings.BadCapacity.Code, bench.Codes);
    }

    [Fact]
    public void An_odd_region_has_no_place_on_a_16_bit_bus()
    {
        var bench = new BoardBench(OddEven);
        Assert.Empty(bench.Chips(BoardBench.Region(new byte[7])));
        Assert.Equal([BoardFindings.HalfWord.Code], bench.Codes);
    }

    [Fact]
    public void A_chip_for_a_site_the_board_has_not_is_told_with_the_nearest()
    {
        var bench = BoardBench.One(chips: "\"U11\": { \"capacity\": 4 }");
        bench.Chips(BoardBench.Region([1]));
        var finding = bench.Findings.Single(finding => finding.Code == BoardFindings.UnknownSite.Code);
        Assert.Equal(("board:chips:U11", "Did you mean U1?"), (finding.Place.Key, finding.Advice));
    }

    [Fact]
    public void A_site_the_ROM_does_not_reach_is_not_used()
    {
        var bench = new BoardBench("\"sites\": [ { \"site\": \"U1\", \"length\": 4 }, { \"site\": \"U2\", \"start\": 4 }, { \"site\": \"U3\", \"region\": \"chr\" } ]");
        Assert.Single(bench.Chips(BoardBench.Region([1, 2, 3, 4])));
        Assert.Equal(2, bench.Codes.Count(code => code == BoardFindings.Unused.Code));
        Assert.False(bench.Log.HasErrors);
    }

    [Fact]
    public void A_region_without_a_site_is_an_error()
    {
        var bench = BoardBench.One();
        bench.Chips(BoardBench.Region([1]), BoardBench.Region([1], "chr"));
        Assert.Contains(BoardFindings.RegionWithoutSite.Code, bench.Codes);
    }

    [Theory]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"length\": 4 }, { \"site\": \"U2\", \"start\": 4, \"length\": 2 } ]", "room for the first 0x000006 (6 bytes): 2 bytes too few")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"length\": 2 }, { \"site\": \"U2\", \"start\": 4 } ]", "room for the first 0x000002 (2 bytes): 6 bytes too few")]
    [InlineData("\"busWidth\": 16, \"sites\": [ { \"site\": \"U1\", \"lane\": \"high\" } ]", "room for the first 0x000000 (0 bytes): 8 bytes too few")]
    [InlineData("\"sites\": [ { \"site\": \"U1\", \"largest\": 4 } ]", "its lines address 0x000004 (4 bytes)")]
    public void A_ROM_with_bytes_no_chip_holds_is_an_error(string members, string message)
    {
        var bench = new BoardBench(members);
        bench.Chips(BoardBench.Region(new byte[8]));
        Assert.Contains(message, bench.Findings.Single(finding => finding.Code == BoardFindings.RomTooLarge.Code).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chip_larger_than_its_lines_address_is_noted()
    {
        var bench = BoardBench.One(", \"largest\": 4", "\"U1\": { \"capacity\": 8 }");
        Assert.Equal("0102030401020304", Hex(Assert.Single(bench.Chips(BoardBench.Region([1, 2, 3, 4])))));
        Assert.Contains(BoardFindings.LargerThanSite.Code, bench.Codes);
    }

    private static string Hex(Cartwright.Images.ChipImage chip) => Convert.ToHexString(chip.Bytes.Span);
}
