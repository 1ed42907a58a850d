using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

/// <summary>What both text formats accept without a word, and how overlapping or scattered records are told.</summary>
public sealed class RecordTextTests
{
    private static readonly string[] Hex = [Records.Hex(0, 0x100, 1, 2), Records.Hex(0, 0x102, 0xAB, 0xCD), Records.HexEnd];
    private static readonly string[] S = [Records.S(1, 0x100, 1, 2), Records.S(1, 0x102, 0xAB, 0xCD), Records.S(9, 0)];

    [Theory]
    [InlineData("\n", "\n")]
    [InlineData("\r\n", "\r\n")]
    [InlineData("\r", "\r")]
    [InlineData("\n", "")]
    [InlineData("\n\n\r\n  \n", "\n\n")]
    [InlineData(" \t\n", " \t")]
    [InlineData("\r\n", "\r\n\x1A")]
    [InlineData("\r\n", "\x1A")]
    [InlineData("\r\n", "\r\n\x1A\x1A\x1A\r\n")]
    public void Line_ends_blanks_and_end_marks_are_accepted(string between, string after)
    {
        foreach (var (file, lines) in new[] { ("game.hex", Hex), ("game.srec", S) })
        {
            Assert.Equal("00000100: 0102ABCD", Reading.Show(Reading.Clean(file, string.Join(between, lines) + after)));
        }
    }

    [Fact]
    public void Lower_case_digits_are_accepted() =>
        Assert.Equal("00000100: 0102ABCD", Reading.Show(Reading.Clean("game.hex", Records.Lines(Hex).ToLowerInvariant())));

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Faults_name_their_line_and_column_whatever_ends_lines(string end)
    {
        var finding = Assert.Single(Reading.Of("game.hex", string.Join(end, Hex[0], "", ":02010200AGCD84", Hex[2])).Findings);
        Assert.Equal((ProgramFindings.RecordDigit.Code, 3, 11), (finding.Code, finding.Place.Line, finding.Place.Column));
    }

    [Fact]
    public void Every_faulty_line_is_told_at_once()
    {
        var reading = Reading.Of("game.hex", Records.Lines(":0100000055AB", ":01", Hex[0], "listing", Records.HexEnd));
        Assert.Equal([1, 2, 4], reading.Findings.Select(f => f.Place.Line));
    }

    [Fact]
    public void Many_like_faults_are_counted_not_listed()
    {
        var reading = Reading.Of("game.hex", Records.Lines([Hex[0], .. Enumerable.Repeat("listing", 5000), Records.HexEnd]));
        Assert.Equal(10, reading.Codes.Count(code => code == ProgramFindings.RecordMark.Code));
        var rest = Assert.Single(reading.Findings, f => f.Code == ProgramFindings.MoreOfTheSame.Code);
        Assert.Contains("4990 more", rest.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Differing_bytes_for_one_address_name_both_lines()
    {
        var text = Records.Lines(Records.Hex(0, 0x100, 1, 2, 3, 4), Records.Hex(0, 0x200, 9), Records.Hex(0, 0x102, 3, 5), Records.HexEnd);
        var finding = Assert.Single(Reading.Of("game.hex", text).Findings);
        Assert.Equal((ProgramFindings.OverlapDiffers.Code, 3), (finding.Code, finding.Place.Line));
        Assert.Equal("Address 0x00000103 gets 0x05 at line 3, but 0x04 at line 1.", finding.Message);
    }

    [Fact]
    public void An_overlap_below_the_earlier_record_is_told_in_file_order()
    {
        var text = Records.Lines(Records.Hex(0, 0x102, 3, 4), Records.Hex(0, 0x100, 1, 2, 9), Records.HexEnd);
        Assert.Equal("Address 0x00000102 gets 0x09 at line 2, but 0x03 at line 1.", Assert.Single(Reading.Of("game.hex", text).Findings).Message);
    }

    [Fact]
    public void The_same_bytes_twice_are_a_warning_and_stand_once()
    {
        var text = Records.Lines(Records.S(1, 0x100, 1, 2, 3, 4), Records.S(1, 0x102, 3, 4, 5), Records.S(9, 0));
        var reading = Reading.Of("game.srec", text);
        Assert.Equal("00000100: 0102030405", Reading.Show(reading.Program!.Segments));
        var finding = Assert.Single(reading.Findings);
        Assert.Equal((ProgramFindings.OverlapSame.Code, 2), (finding.Code, finding.Place.Line));
        Assert.Contains("line 1", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void One_overlap_over_several_records_is_followed_to_its_end()
    {
        var text = Records.Lines(
            Records.Hex(0, 0x100, 1, 2, 3), Records.Hex(0, 0x102, 3, 4, 5), Records.Hex(0, 0x101, 2, 3, 4, 6), Records.HexEnd);
        Assert.Contains(Reading.Of("game.hex", text).Findings, f => f.Message == "Address 0x00000104 gets 0x06 at line 3, but 0x05 at line 2.");
    }

    [Fact]
    public void Half_steps_are_explained_as_word_addresses()
    {
        var records = Enumerable.Range(0, 8).Select(i => Records.Hex(0, 0x1000 + (16 * i), Records.Count(32, i)));
        var finding = Assert.Single(Reading.Of("game.hex", Records.Lines([.. records, Records.HexEnd])).Findings);
        Assert.Equal(ProgramFindings.AddressesCountWords.Code, finding.Code);
        Assert.Contains("address unit", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_values_at_one_address_are_explained_as_a_list_of_serials()
    {
        var records = Enumerable.Range(0, 8).Select(i => Records.S(1, 0x7FF0, 0, 0, 0, (byte)i));
        Assert.Equal([ProgramFindings.SerialList.Code], Reading.Of("game.srec", Records.Lines([.. records, Records.S(9, 0)])).Codes);
    }

    [Fact]
    public void A_single_overlap_is_no_pattern()
    {
        var text = Records.Lines(Records.Hex(0, 0, Records.Count(4)), Records.Hex(0, 2, Records.Count(4)), Records.HexEnd);
        Assert.Equal([ProgramFindings.OverlapDiffers.Code], Reading.Of("game.hex", text).Codes);
    }

    [Fact]
    public void A_stray_record_far_away_is_named_with_the_rest()
    {
        var text = Records.Lines(
            Records.Hex(0, 0x8000, Records.Count(16)), Records.Hex(0, 0x8010, Records.Count(16)), Records.Hex(4, 0, 0xFF, 0xFF), Records.Hex(0, 0, 7), Records.HexEnd);
        var finding = Assert.Single(Reading.Of("game.hex", text).Findings);
        Assert.Equal((ProgramFindings.SpanTooLarge.Code, 4), (finding.Code, finding.Place.Line));
        Assert.Equal(
            "The bytes at 0xFFFF0000 (line 4) stand far from the rest at 0x00008000 to 0x0000801F (from line 1 on): the file would span 4294868993 bytes (0xFFFE8001).",
            finding.Message);
    }

    [Fact]
    public void Small_gaps_elsewhere_do_not_hide_the_stray_record()
    {
        var text = Records.Lines(
            Records.S(3, 0x100, 1, 2), Records.S(3, 0xFF000000, 3), Records.S(3, 0x200, 4, 5), Records.S(3, 0xFF000100, 6), Records.S(7, 0));
        Assert.Equal(2, Assert.Single(Reading.Of("game.srec", text).Findings).Place.Line);
    }

    [Fact]
    public void A_stray_record_below_the_rest_is_found_too()
    {
        var text = Records.Lines(Records.S(1, 0, 7), Records.S(3, 0x08000000, Records.Count(16)), Records.S(7, 0));
        Assert.Equal(1, Assert.Single(Reading.Of("game.srec", text).Findings).Place.Line);
    }

    [Fact]
    public void A_regular_file_is_one_slice_of_one_buffer()
    {
        var data = Records.Count(256);
        var text = Records.Lines([.. Enumerable.Range(0, 4096).Select(i => Records.Hex(0, 16 * i, data[..16])), Records.Hex(4, 0, 0, 1), Records.Hex(0, 0, 1, 2), Records.HexEnd]);
        var segment = Assert.Single(Reading.Clean("game.hex", text));
        Assert.Equal(65538, segment.Length);
        Assert.Equal(1, segment.Place.Line);
    }
}
