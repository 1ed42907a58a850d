using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

public sealed class IntelHexReaderTests
{
    // Records and meanings: Intel Hexadecimal Object File Format Specification, revision A, 1988, and TI object format notes.
    [Theory]
    [InlineData(":10010000214601360121470136007EFE09D2190140", "00000100: 214601360121470136007EFE09D21901", null)]
    [InlineData(":020000021200EA\n:0100000055AA", "00012000: 55", null)]
    [InlineData(":0400000300003800C1\n:0100000055AA", "00000000: 55", 0x3800L)]
    [InlineData(":020000040008F2\n:0100000055AA", "00080000: 55", null)]
    [InlineData(":04000005000000CD2A\n:0100000055AA", "00000000: 55", 0xCDL)]
    [InlineData(":00123400BA\n:0100000055AA", "00000000: 55", null)]
    [InlineData(
        ":020000040000FA\n:08FFF800101112131415161765\n:020000040001F9\n:0800000018191A1B1C1D1E1F1C",
        "0000FFF8: 101112131415161718191A1B1C1D1E1F",
        null)]
    public void Worked_records_place_their_bytes(string records, string segments, long? entry)
    {
        var reading = Reading.Of("game.hex", $"{records}\n{Records.HexEnd}\n");
        Assert.Empty(reading.Findings);
        Assert.Equal(segments, Reading.Show(reading.Program!.Segments));
        Assert.Equal(entry, reading.Program.Entry);
    }

    [Fact]
    public void Extended_segment_offsets_wrap_inside_64_KiB()
    {
        var reading = Reading.Of("game.hex", Records.Lines(Records.Hex(2, 0, 0x10, 0x00), Records.Hex(0, 0xFFFE, 1, 2, 3, 4), Records.HexEnd));
        Assert.Equal("00010000: 0304; 0001FFFE: 0102", Reading.Show(reading.Program!.Segments));
        Assert.Equal([ProgramFindings.RecordWraps.Code], reading.Codes);
    }

    [Fact]
    public void Extended_linear_offsets_go_on_into_the_next_64_KiB()
    {
        var text = Records.Lines(Records.Hex(4, 0, 0x08, 0x00), Records.Hex(0, 0xFFFE, 1, 2, 3, 4), Records.HexEnd);
        Assert.Equal("0800FFFE: 01020304", Reading.Show(Reading.Clean("game.hex", text)));
    }

    [Fact]
    public void Extended_linear_addresses_wrap_at_4_GiB()
    {
        var options = new ProgramReadOptions { LargestSpan = Array.MaxLength };
        var text = Records.Lines(Records.Hex(4, 0, 0xFF, 0xFF), Records.Hex(0, 0xFFFE, 1, 2, 3, 4), Records.HexEnd);
        var reading = Reading.Of("game.hex", text, null, options);
        Assert.Contains(ProgramFindings.RecordWraps.Code, reading.Codes);
        Assert.Contains(ProgramFindings.SpanTooLarge.Code, reading.Codes);
    }

    [Fact]
    public void The_latest_base_record_counts_whatever_its_kind()
    {
        var text = Records.Lines(
            Records.Hex(4, 0, 0x00, 0x02), Records.Hex(0, 0, 1), Records.Hex(2, 0, 0x10, 0x00), Records.Hex(0, 0, 2), Records.Hex(0, 4, 3), Records.HexEnd);
        Assert.Equal("00010000: 02; 00010004: 03; 00020000: 01", Reading.Show(Reading.Clean("game.hex", text)));
    }

    [Fact]
    public void Address_unit_2_doubles_every_address()
    {
        var text = Records.Lines(
            Records.Hex(4, 0, 0x00, 0x01),
            Records.Hex(0, 0x1000, Records.Count(32)),
            Records.Hex(0, 0x1010, Records.Count(32, 32)),
            Records.Hex(5, 0, 0, 0, 0x10, 0),
            Records.HexEnd);
        var reading = Reading.Of("game.hex", text, null, new ProgramReadOptions { AddressUnit = 2 });
        Assert.Empty(reading.Findings);
        Assert.Equal($"00022000: {Convert.ToHexString(Records.Count(64))}", Reading.Show(reading.Program!.Segments));
        Assert.Equal(0x2000, reading.Program.Entry);
    }

    [Fact]
    public void An_end_record_may_carry_the_start_address() =>
        Assert.Equal(0x1234, Reading.Of("game.hex", Records.Lines(Records.Hex(0, 0, 1), Records.Hex(1, 0x1234))).Program!.Entry);

    [Fact]
    public void A_start_record_counts_before_the_end_record() =>
        Assert.Equal(0x10, Reading.Of("game.hex", Records.Lines(Records.Hex(0, 0, 1), Records.Hex(5, 0, 0, 0, 0, 0x10), Records.Hex(1, 0x1234))).Program!.Entry);

    [Fact]
    public void The_last_of_two_start_addresses_is_kept()
    {
        var reading = Reading.Of("game.hex", Records.Lines(Records.Hex(0, 0, 1), Records.Hex(5, 0, 0, 0, 1, 0), Records.Hex(5, 0, 0, 0, 2, 0), Records.HexEnd));
        Assert.Equal(0x200, reading.Program!.Entry);
        Assert.Equal([ProgramFindings.StartTwice.Code], reading.Codes);
    }

    [Fact]
    public void A_segment_knows_the_line_it_begins_on()
    {
        var text = Records.Lines("", Records.Hex(0, 0x20, 1, 2), Records.Hex(0, 0x22, 3), "", Records.Hex(0, 0x10, 4), Records.HexEnd);
        Assert.Equal([5, 2], Reading.Clean("game.hex", text).Select(s => s.Place.Line));
    }
}
