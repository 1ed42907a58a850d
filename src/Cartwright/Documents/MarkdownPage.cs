using System.Collections.Immutable;
using System.Text;

namespace Cartwright.Documents;

/// <summary>Writes a page in Markdown, block by block, with LF line ends and one blank line between blocks.</summary>
/// <param name="depth">How many levels the headings are moved down, for a page inside a page.</param>
internal sealed class MarkdownPage(int depth = 0)
{
    private readonly StringBuilder _text = new();

    /// <summary>A heading.</summary>
    /// <param name="level">Its level, 1 for the page's title.</param>
    /// <param name="text">Its text.</param>
    public void Heading(int level, string text) => Block().Append('#', level + depth).Append(' ').Append(text).Append('\n');

    /// <summary>A paragraph, or any block that is written already.</summary>
    /// <param name="text">Its text.</param>
    public void Paragraph(string text) => Block().Append(text.TrimEnd('\n')).Append('\n');

    /// <summary>A list.</summary>
    /// <param name="items">The items; nothing is written when there are none.</param>
    public void List(IEnumerable<string> items)
    {
        var first = true;
        foreach (var item in items)
        {
            (first ? Block() : _text).Append("- ").Append(item).Append('\n');
            first = false;
        }
    }

    /// <summary>A heading of the second level with a list; nothing when the list is empty.</summary>
    /// <param name="title">The heading.</param>
    /// <param name="items">The items.</param>
    public void Section(string title, ImmutableArray<string> items)
    {
        if (!items.IsEmpty)
        {
            Heading(2, title);
            List(items);
        }
    }

    /// <summary>A table with cells as wide as their text.</summary>
    /// <param name="heads">The headings of the columns.</param>
    /// <param name="rows">The cells.</param>
    public void Table(ImmutableArray<string> heads, IEnumerable<ImmutableArray<string>> rows) => MarkdownTable.Append(Block(), heads, rows);

    /// <summary>A table that reads on a terminal as well.</summary>
    /// <param name="heads">The headings of the columns.</param>
    /// <param name="rows">The cells.</param>
    public void AlignedTable(ImmutableArray<string> heads, IEnumerable<ImmutableArray<string>> rows) => MarkdownTable.AppendAligned(Block(), heads, rows);

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private StringBuilder Block() => _text.Length == 0 ? _text : _text.Append('\n');
}
