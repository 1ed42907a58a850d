using System.Collections.Immutable;
using System.Text;

namespace Cartwright.Documents;

/// <summary>Writes tables in Markdown, with LF line ends.</summary>
internal static class MarkdownTable
{
    /// <summary>Writes a table with cells as wide as their text.</summary>
    /// <param name="page">Receives the lines.</param>
    /// <param name="heads">The headings of the columns.</param>
    /// <param name="rows">The cells, as many a row as there are columns.</param>
    public static void Append(StringBuilder page, ImmutableArray<string> heads, IEnumerable<ImmutableArray<string>> rows) =>
        Append(page, heads, rows, [.. heads.Select(static _ => 0)]);

    /// <summary>Writes a table with every column but the last padded to one width, so that it reads on a terminal as well.</summary>
    /// <param name="page">Receives the lines.</param>
    /// <param name="heads">The headings of the columns.</param>
    /// <param name="rows">The cells, as many a row as there are columns.</param>
    public static void AppendAligned(StringBuilder page, ImmutableArray<string> heads, IEnumerable<ImmutableArray<string>> rows)
    {
        var all = rows.ToList();
        Append(page, heads, all, [.. heads.Select((head, column) => column == heads.Length - 1 ? 0 : all.Select(row => Escape(row[column]).Length).Append(head.Length).Max())]);
    }

    private static void Append(StringBuilder page, ImmutableArray<string> heads, IEnumerable<ImmutableArray<string>> rows, ImmutableArray<int> widths)
    {
        AppendRow(page, heads, widths);
        AppendRow(page, [.. widths.Select(static width => new string('-', Math.Max(3, width)))], widths);
        foreach (var row in rows)
        {
            AppendRow(page, row, widths);
        }
    }

    private static void AppendRow(StringBuilder page, ImmutableArray<string> cells, ImmutableArray<int> widths)
    {
        for (var column = 0; column < cells.Length; column++)
        {
            var cell = Escape(cells[column]).PadRight(widths[column]);
            page.Append("| ").Append(cell).Append(cell.Length == 0 ? "" : " ");
        }

        page.Append("|\n");
    }

    private static string Escape(string cell) => cell.Replace("|", "\\|", StringComparison.Ordinal);
}
