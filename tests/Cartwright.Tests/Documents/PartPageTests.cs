using Cartwright.Chips;
using Cartwright.Documents;
using Xunit;

namespace Cartwright.Tests.Documents;

public sealed class PartPageTests
{
    [Fact]
    public void The_page_of_parts_is_up_to_date() => Approved.Equal("docs/parts.md", PartPage.Markdown());

    [Fact]
    public void Every_part_has_one_row() =>
        Assert.Equal(
            PartCatalog.BuiltIn.All.Length,
            PartPage.Markdown().Split('\n').Count(static line => line.StartsWith("| ", StringComparison.Ordinal)) - (2 * Enum.GetValues<PartKind>().Length));

    [Fact]
    public void Every_row_has_as_many_cells_as_the_heading() =>
        Assert.Single(
            PartPage.Markdown().Split('\n').Where(static line => line.StartsWith('|')).Select(static line => line.Count('|'.Equals)).Distinct());
}
