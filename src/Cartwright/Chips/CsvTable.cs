using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Unicode;

namespace Cartwright.Chips;

/// <summary>A table read from comma-separated text (RFC 4180 quoting, LF line ends) that comes with the library. A field becomes a string only when it is asked for.</summary>
/// <remarks>Such a table is part of the program, so anything wrong with it is a bug and throws <see cref="InvalidDataException"/>.</remarks>
internal sealed class CsvTable
{
    private const byte Quote = (byte)'"';
    private static readonly SearchValues<byte> Stops = SearchValues.Create(",\n\"\r"u8);

    private readonly string _name;
    private readonly byte[] _text;
    private readonly List<Range> _fields = [];
    private readonly Dictionary<string, int> _columns = new(StringComparer.Ordinal);

    private CsvTable(string name, byte[] text)
    {
        _name = name;
        _text = text;
        var at = ReadRecord(0, 1);
        for (var column = 0; column < _fields.Count; column++)
        {
            if (!_columns.TryAdd(Text(column), column))
                throw Malformed(1, $"column '{Text(column)}' stands twice");
        }

        var rows = ImmutableArray.CreateBuilder<CsvRow>();
        while (at < text.Length)
        {
            var first = _fields.Count;
            var record = rows.Count + 2;
            at = ReadRecord(at, record);
            if (_fields.Count - first != _columns.Count)
                throw Malformed(record, $"has {_fields.Count - first} fields, the header {_columns.Count}");
            rows.Add(new CsvRow(this, first, record));
        }

        Header = [.. _columns.Keys];
        Rows = rows.DrainToImmutable();
    }

    /// <summary>Names of the columns, in their order.</summary>
    public ImmutableArray<string> Header { get; }

    /// <summary>The records after the header.</summary>
    public ImmutableArray<CsvRow> Rows { get; }

    /// <summary>Reads a whole table.</summary>
    /// <param name="name">What to call it in an exception.</param>
    /// <param name="utf8">The text, which the table keeps.</param>
    /// <exception cref="InvalidDataException">The text is no such table.</exception>
    public static CsvTable Parse(string name, byte[] utf8)
    {
        if (!Utf8.IsValid(utf8))
            throw new InvalidDataException($"{name} is not UTF-8");
        return utf8.Length > 0 ? new CsvTable(name, utf8) : throw new InvalidDataException($"{name} is empty");
    }

    /// <summary>Position of a column.</summary>
    /// <exception cref="InvalidDataException">There is no such column.</exception>
    internal int IndexOf(string column) =>
        _columns.TryGetValue(column, out var index) ? index : throw Malformed(1, $"has no column '{column}'");

    /// <summary>The text of a field, counted from the first of the header.</summary>
    internal string Text(int field)
    {
        var (start, length) = _fields[field].GetOffsetAndLength(_text.Length);
        var text = Encoding.UTF8.GetString(_text, start, length);
        return start > 0 && _text[start - 1] == Quote ? text.Replace("\"\"", "\"", StringComparison.Ordinal) : text;
    }

    /// <summary>The exception for a bad record.</summary>
    internal InvalidDataException Malformed(int record, string what) => new($"{_name} record {record}: {what}");

    private int ReadRecord(int at, int record)
    {
        var first = _fields.Count;
        byte delimiter;
        do
        {
            at = at < _text.Length && _text[at] == Quote ? ReadQuoted(at + 1, record) : ReadPlain(at);
            delimiter = at < _text.Length ? _text[at++] : throw Malformed(record, "does not end with a line feed");
            if (delimiter is not ((byte)',' or (byte)'\n'))
                throw Malformed(record, $"field {_fields.Count - first} has text beside its quotes, or a carriage return");
        }
        while (delimiter == ',');
        return at;
    }

    private int ReadPlain(int start)
    {
        var length = _text.AsSpan(start).IndexOfAny(Stops);
        var end = length < 0 ? _text.Length : start + length;
        _fields.Add(start..end);
        return end;
    }

    // Gives the position behind the closing quote; a quote inside stands doubled.
    private int ReadQuoted(int start, int record)
    {
        for (var at = start; ; at += 2)
        {
            var length = _text.AsSpan(at).IndexOf(Quote);
            if (length < 0)
                throw Malformed(record, "has a quote that is never closed");
            at += length;
            if (at + 1 == _text.Length || _text[at + 1] != Quote)
            {
                _fields.Add(start..at);
                return at + 1;
            }
        }
    }
}
