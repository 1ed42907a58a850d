using System.Collections.Immutable;
using Cartwright.Platforms;

namespace Cartwright.Documents;

/// <summary>The pages of all platforms, one behind the other, with a table of contents.</summary>
public static class PlatformPages
{
    private const string Head = """
        What Cartwright knows of each platform: addresses, sizes, header fields, checksums, save memory and what commonly goes wrong.
        This page is generated from the same tables that build a cart; `cartwright platforms NAME` prints one of them.

        The column *when not stated* says what a header field holds when the manifest's `header` does not name it. A value that is a mere default gives
        way to what a program itself holds there. What is worked out is written over the program's bytes unless `header:keep` keeps them, and a checksum
        unless `header:keep` names it.

        A fact whose source says "from memory" was not seen in a document and is never the reason of an error.
        """;

    /// <summary>Writes the pages.</summary>
    /// <param name="platforms">The platforms.</param>
    public static string Markdown(PlatformCatalog platforms)
    {
        var page = new MarkdownPage();
        page.Heading(1, "Platforms");
        page.Paragraph(Head);
        page.Table(["platform", "name", "header"], platforms.All.Select(static platform => ImmutableArray.Create(
            $"[{platform.Facts.Id}](#{platform.Facts.Id})",
            platform.Facts.Name,
            string.Join(", ", platform.Layouts.SelectMany(static layout => layout.Headers).Select(static table => table.Title).Distinct()))));
        foreach (var platform in platforms.All)
        {
            page.Paragraph($"<a id=\"{platform.Facts.Id}\"></a>");
            page.Paragraph(PlatformPage.Markdown(platform, depth: 1));
        }

        return page.ToString();
    }
}
