using System.Text;
using Cartwright.Chips;
using Xunit;

namespace Cartwright.Tests.Chips;

public sealed class CsvTableTests
{
    [Fact]
    public void Plain_quoted_and_blank_fields_are_read()
    {
        // RFC 4180, section 2, rules 5 to 7: fields in double quotes, line breaks and commas inside, doubled quotes.
        var table = Parse("a,b,c\n1,\"x, \"\"y\"\"\nz\",\n,\"\",3\n");
        Assert.Equal(["a", "b", "c"], table.Header);
        Assert.Equal(["1", "x, \"y\"\nz", ""], Fields(table, 0));
        Assert.Equal(["", "", "3"], Fields(table, 1));
        Assert.Equal(2, table.Rows.Length);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("a,b", "record 1: does not end")]
    [InlineData("a,b\n1,2", "record 2: does not end")]
    [InlineData("a,b\n1,\"2\"", "record 2: does not end")]
    [InlineData("a,b\n1,\"2", "record 2: has a quote that is never closed")]
    [InlineData("a,b\n1,\"2\"x\n", "record 2: field 2 has text beside its quotes")]
    [InlineData("a,b\n1,x\"2\"\n", "record 2: field 2 has text beside its quotes")]
    [InlineData("a,b\r\n1,2\r\n", "record 1: field 2")]
    [InlineData("a,b\n1\n", "record 2: has 1 fields, the header 2")]
    [InlineData("a,b\n1,2,3\n", "record 2: has 3 fields, the header 2")]
    [InlineData("a,a\n", "column 'a' stands twice")]
    public void Anything_else_is_refused_with_its_place(string text, string complaint) =>
        Assert.Contains(complaint, Assert.Throws<InvalidDataException>(() => Parse(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void Bytes_that_are_no_text_are_refused() =>
        Assert.Throws<InvalidDataException>(() => CsvTable.Parse("t.csv", [(byte)'a', 0xFF, (byte)'\n']));

    [Fact]
    public void A_missing_column_is_named() =>
        Assert.Contains("no column 'z'", Assert.Throws<InvalidDataException>(() => Parse("a\n1\n").Rows[0]["z"]).Message, StringComparison.Ordinal);

    private static CsvTable Parse(string text) => CsvTable.Parse("t.csv", Encoding.UTF8.GetBytes(text));

    private static IEnumerable<string> Fields(CsvTable table, int row) => table.Header.Select(column => table.Rows[row][column]);
}
