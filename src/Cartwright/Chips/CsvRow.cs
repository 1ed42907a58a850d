namespace Cartwright.Chips;

/// <summary>One record of a <see cref="CsvTable"/>.</summary>
internal readonly struct CsvRow(CsvTable table, int firstField, int record)
{
    /// <summary>Reads a field's text into a value; false when the text is not one.</summary>
    internal delegate bool Reader<T>(string text, out T value);

    /// <summary>The text of one field.</summary>
    /// <exception cref="InvalidDataException">There is no such column.</exception>
    public string this[string column] => table.Text(firstField + table.IndexOf(column));

    /// <summary>The text of a field that must not be blank.</summary>
    /// <exception cref="InvalidDataException">It is blank, or there is no such column.</exception>
    public string Required(string column) =>
        this[column] is { Length: > 0 } text ? text : throw table.Malformed(record, $"'{column}' is blank");

    /// <summary>The value of one field.</summary>
    /// <exception cref="InvalidDataException">The text is no such value, or there is no such column.</exception>
    public T Read<T>(string column, Reader<T> reader) =>
        reader(this[column], out var value) ? value : throw table.Malformed(record, $"'{column}' cannot be '{this[column]}'");
}
