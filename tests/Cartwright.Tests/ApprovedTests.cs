using Xunit;

namespace Cartwright.Tests;

public sealed class ApprovedTests
{
    [Fact]
    public void Equal_texts_have_no_difference() => Assert.Null(Approved.FirstDifference("a\nb\n", "a\nb\n"));

    [Theory]
    [InlineData("a\nb\n", "a\nc\n", "line 2", "\"b\"", "\"c\"")]
    [InlineData("a\n", "a\nb\n", "line 2", "\"\"", "\"b\"")]
    [InlineData("a", "a\nb", "line 2", "(no such line)", "\"b\"")]
    [InlineData("a\r\n", "a\n", "line 1", "\"a\\r\"", "\"a\"")]
    public void The_first_differing_line_is_shown(string approved, string actual, string line, string inFile, string generated)
    {
        var difference = Approved.FirstDifference(approved, actual);
        Assert.Equal($"{line}\n  in the file: {inFile}\n  generated:   {generated}", difference);
    }
}
