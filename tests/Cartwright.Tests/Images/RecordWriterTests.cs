using System.Text;
using Cartwright.Images;
using Cartwright.Tests.Programs;
using Xunit;

namespace Cartwright.Tests.Images;

public sealed class RecordWriterTests
{
    // The data and end records are worked examples of the Intel Hexadecimal Object File Format Specification, revision A, 1988.
    [Fact]
    public void Intel_HEX_of_a_worked_record() =>
        Assert.Equal(
            [":10010000214601360121470136007EFE09D2190140", ":00000001FF"],
            Hex(Convert.FromHexString("214601360121470136007EFE09D21901"), 0x100));

    [Fact]
    public void Intel_HEX_splits_at_the_64_KiB_edge() =>
        Assert.Equal(
            [":08FFF800101112131415161765", ":020000040001F9", ":0800000018191A1B1C1D1E1F1C", ":00000001FF"],
            Hex(Records.Count(16, 0x10), 0xFFF8));

    [Fact]
    public void Intel_HEX_names_the_upper_address_first_when_it_is_not_0() =>
        Assert.Equal([":020000040008F2", ":0100000055AA", ":00000001FF"], Hex([0x55], 0x80000));

    // Worked examples of the srec_motorola(5) manual page; the header is theirs too.
    [Theory]
    [InlineData("78D8A2FF9A", 0x8000, "S108800078D8A2FF9AEC", "S9030000FC")]
    [InlineData("01020304", 0x18000, "S208018000010203046C", "S804000000FB")]
    [InlineData("DEADBEEF", 0x8000000, "S30908000000DEADBEEFB6", "S70500000000FA")]
    public void S_records_of_worked_examples(string data, long address, string record, string end) =>
        Assert.Equal(["S00600004844521B", record, "S5030001FB", end], S(Convert.FromHexString(data), address, "HDR"));

    [Theory]
    [InlineData(0xFFFF, 1, "S1")]
    [InlineData(0xFFFF, 2, "S2")]
    [InlineData(0xFFFFFF, 1, "S2")]
    [InlineData(0xFFFFFF, 2, "S3")]
    [InlineData(0xFFFFFFFF, 1, "S3")]
    public void The_highest_address_chooses_the_record_type(long address, int length, string type) =>
        Assert.StartsWith(type, S(new byte[length], address, "")[1], StringComparison.Ordinal);

    [Theory]
    [InlineData(65535, "S503FFFFFE")]
    [InlineData(65536, "S604010000FA")]
    public void The_number_of_records_takes_the_field_it_needs(int records, string line) =>
        Assert.Equal(line, S(new byte[32 * records], 0, "")[^2]);

    [Fact]
    public void A_header_is_cut_and_kept_to_printable_ASCII() =>
        Assert.Equal(Records.S(0, 0, Encoding.ASCII.GetBytes("L?ntern Tide " + new string('x', 19))), S([1], 0, "L\u00E4ntern Tide " + new string('x', 99))[0]);

    [Fact]
    public void Bytes_beyond_32_bits_are_refused()
    {
        using var stream = new MemoryStream();
        Assert.Throws<ArgumentOutOfRangeException>(() => IntelHexWriter.Write(stream, [1, 2], 0xFFFFFFFF));
        Assert.Throws<ArgumentOutOfRangeException>(() => SRecordWriter.Write(stream, [1], "", -1));
        Assert.Equal(0, stream.Length);
    }

    private static string[] Hex(byte[] data, long address)
    {
        using var stream = new MemoryStream();
        IntelHexWriter.Write(stream, data, address);
        return Lines(stream);
    }

    private static string[] S(byte[] data, long address, string header)
    {
        using var stream = new MemoryStream();
        SRecordWriter.Write(stream, data, header, address);
        return Lines(stream);
    }

    private static string[] Lines(MemoryStream stream)
    {
        var text = Encoding.ASCII.GetString(stream.ToArray());
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        return text[..^2].Split("\r\n");
    }
}
