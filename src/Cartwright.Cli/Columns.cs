namespace Cartwright.Cli;

/// <summary>Prints rows with their columns under each other.</summary>
internal static class Columns
{
    private const string Gap = "  ";

    public static void Write(TextWriter output, string indent, IReadOnlyList<string[]> rows)
    {
        if (rows.Count == 0)
        {
            return;
        }

        var widths = Enumerable.Range(0, rows.Max(static row => row.Length))
            .Select(column => rows.Max(row => column < row.Length ? row[column].Length : 0))
            .ToArray();
        foreach (var row in rows)
        {
            output.WriteLine((indent + string.Join(Gap, row.Select((cell, column) => cell.PadRight(widths[column])))).TrimEnd());
        }
    }
}
