using Cartwright.Findings;
using Xunit;

namespace Cartwright.Tests;

public sealed class FindingTextTests
{
    private static readonly FindingRule Rule = new("CW0001", FindingSeverity.Warning, "Rule", "Why.", "Nothing, if it is meant.");

    [Fact]
    public void A_finding_is_one_line_and_moves_no_cursor() =>
        Assert.Equal("a b.bin: warning CW0001: `\uFFFD[2J` is odd. Do nothing, if it is meant.", FindingText.Line(new Finding(Rule, new SourcePlace("a\nb.bin"), "`\u001B[2J` is odd.")));

    // MSBuild and Visual Studio format for diagnostic messages.
    [Theory]
    [InlineData(12, 15, "cart.json(12,15): warning CW0001: Odd. Expected: even. Mend it.")]
    [InlineData(12, 0, "cart.json(12): warning CW0001: Odd. Expected: even. Mend it.")]
    [InlineData(0, 0, "cart.json: warning CW0001: Odd. Expected: even. Mend it.")]
    public void The_place_stands_first(int line, int column, string text) =>
        Assert.Equal(text, FindingText.Line(new Finding(Rule, new SourcePlace("cart.json", line, column), "Odd.", "even", "Mend it.")));
}
