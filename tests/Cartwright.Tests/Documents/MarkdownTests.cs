using System.Text;
using Cartwright.Documents;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Documents;

public sealed class MarkdownTests
{
    [Fact]
    public void A_table_has_a_line_under_its_heading_and_escapes_its_own_mark()
    {
        var page = new StringBuilder();
        MarkdownTable.Append(page, ["a", "b"], [["x|y", ""], ["", "z"]]);
        Assert.Equal("| a | b |\n| --- | --- |\n| x\\|y | |\n| | z |\n", page.ToString());
    }

    [Fact]
    public void An_aligned_table_pads_all_columns_but_the_last()
    {
        var page = new StringBuilder();
        MarkdownTable.AppendAligned(page, ["a", "b"], [["long one", "x"], ["s|t", "longer still"]]);
        Assert.Equal("| a        | b |\n| -------- | --- |\n| long one | x |\n| s\\|t     | longer still |\n", page.ToString());
    }

    [Fact]
    public void Blocks_stand_apart_by_one_blank_line()
    {
        var page = new MarkdownPage(depth: 1);
        page.Heading(1, "Title");
        page.List(["one", "two"]);
        page.Section("Nothing", []);
        page.Paragraph("End.\n");
        Assert.Equal("## Title\n\n- one\n- two\n\nEnd.\n", page.ToString());
    }

    public static TheoryData<string, string> Pages => new()
    {
        { "parts", PartPage.Markdown() },
        { "boards", BoardPage.Markdown() },
        { "test images", TestImagePage.Markdown() },
        { "findings", FindingPage.Markdown(FindingCatalog.Groups) },
        { "manifest", ManifestPage.Markdown() },
        { "platforms", PlatformPages.Markdown(PlatformCatalog.BuiltIn) },
        { "schema", CartSchema.Json(PlatformCatalog.BuiltIn) },
    };

    [Theory]
    [MemberData(nameof(Pages), DisableDiscoveryEnumeration = true)]
    public void Pages_are_clean_text(string name, string page)
    {
        Assert.False(page.Contains('\r', StringComparison.Ordinal), name);
        Assert.DoesNotContain(page.Split('\n'), line => line.Length > 0 && char.IsWhiteSpace(line[^1]));
        Assert.EndsWith("\n", page, StringComparison.Ordinal);
        Assert.DoesNotContain("\n\n\n", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Pages), DisableDiscoveryEnumeration = true)]
    public void Tables_have_as_many_cells_in_each_row_as_in_the_heading(string name, string page)
    {
        foreach (var table in page.Split("\n\n").Where(static block => block.StartsWith("| ", StringComparison.Ordinal)))
        {
            var cells = table.TrimEnd('\n').Split('\n').Select(line => line.Replace("\\|", "", StringComparison.Ordinal).Count('|'.Equals)).Distinct();
            Assert.True(cells.Count() == 1, $"{name}: {table}");
        }
    }

    [Theory]
    [MemberData(nameof(Pages), DisableDiscoveryEnumeration = true)]
    public void Links_within_a_page_lead_somewhere(string name, string page)
    {
        var headings = page.Split('\n').Where(line => line.StartsWith('#')).Select(line => line.TrimStart('#', ' '));
        foreach (var link in page.Split("](#").Skip(1).Select(rest => rest[..rest.IndexOf(')', StringComparison.Ordinal)]))
        {
            Assert.True(page.Contains($"<a id=\"{link}\"></a>", StringComparison.Ordinal) || headings.Contains(link), $"{name}: {link}");
        }
    }
}
