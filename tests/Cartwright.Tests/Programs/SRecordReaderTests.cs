using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

public sealed class SRecordReaderTests
{
    // Records and meanings: srec_motorola(5) manual page.
    [Theory]
    [InlineData("S00600004844521B\nS10400005A_\nS9030000FC", "00000000: 5A", 0L)]
    [InlineData("S108800078D8A2FF9AEC\nS90380007C", "00008000: 78D8A2FF9A", 0x8000L)]
    [InlineData("S208018000010203046C\nS8040180007A", "00018000: 01020304", 0x18000L)]
    [InlineData("S30908000000DEADBEEFB6\nS70508000000F2", "08000000: DEADBEEF", 0x8000000L)]
    [InlineData("S10400005A_\nS10400015B_\nS10400025C_\nS5030003F9\nS9030000FC", "00000000: 5A5B5C", 0L)]
    [InlineData("S10400005A_\nS10400015B_\nS10400025C_\nS604000003F8\nS9030000FC", "00000000: 5A5B5C", 0L)]
    [InlineData("S1031234B6\nS10400005A_\nS9030000FC", "00000000: 5A", 0L)]
    public void Worked_records_place_their_bytes(string records, string segments, long entry)
    {
        var reading = Reading.Of("game.s19", WithChecksums(records) + "\n");
        Assert.Empty(reading.Findings);
        Assert.Equal(segments, Reading.Show(reading.Program!.Segments));
        Assert.Equal(entry, reading.Program.Entry);
    }

    [Fact]
    public void Record_types_may_be_mixed_and_a_header_may_come_late_or_not_at_all()
    {
        var text = Records.Lines(Records.S(3, 0x12, 3), Records.S(1, 0x10, 1), Records.S(0, 0x1234, 0x51), Records.S(2, 0x11, 2), Records.S(9, 0));
        Assert.Equal("00000010: 010203", Reading.Show(Reading.Clean("game.srec", text)));
    }

    [Fact]
    public void A_16_bit_number_of_records_may_have_wrapped()
    {
        var records = Enumerable.Range(0, 0x1_0002).Select(i => Records.S(2, i, (byte)i));
        Assert.Equal(0x1_0002, Assert.Single(Reading.Clean("game.s28", Records.Lines([.. records, Records.S(5, 2), Records.S(8, 0)]))).Length);
    }

    [Fact]
    public void A_missing_end_record_is_only_a_warning()
    {
        var reading = Reading.Of("game.srec", Records.Lines(Records.S(1, 0x10, 1)));
        Assert.Equal("00000010: 01", Reading.Show(reading.Program!.Segments));
        Assert.Equal([ProgramFindings.TerminatorMissing.Code], reading.Codes);
    }

    [Fact]
    public void Lines_of_other_text_are_skipped_with_a_warning()
    {
        var reading = Reading.Of("game.srec", Records.Lines("; Lantern Tide", Records.S(1, 0x10, 1), Records.S(9, 0)));
        Assert.Equal("00000010: 01", Reading.Show(reading.Program!.Segments));
        var finding = Assert.Single(reading.Findings);
        Assert.Equal((ProgramFindings.LineSkipped.Code, 1), (finding.Code, finding.Place.Line));
    }

    [Fact]
    public void Address_unit_2_doubles_every_address()
    {
        var text = Records.Lines(Records.S(2, 0x1000, 1, 2, 3, 4), Records.S(2, 0x1002, 5, 6), Records.S(8, 0x1000));
        var reading = Reading.Of("game.srec", text, null, new ProgramReadOptions { AddressUnit = 2 });
        Assert.Equal("00002000: 010203040506", Reading.Show(reading.Program!.Segments));
        Assert.Equal(0x2000, reading.Program.Entry);
    }

    // An underscore stands for the checksum of a record that is only there to carry the worked one beside it.
    private static string WithChecksums(string records) => string.Join('\n', records.Split('\n').Select(line =>
        line.EndsWith('_') ? Records.S(1, Convert.ToInt64(line[4..8], 16), Convert.FromHexString(line[8..^1])) : line));
}
