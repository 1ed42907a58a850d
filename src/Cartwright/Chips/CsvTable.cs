using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Unicode;

namespace Cartwright.Chips;

/// <summary>A table read from comma-separated text (RFC 4180 quoting, LF line ends) that comes with the library.</summary>
/// <remarks>Such a table is part of the program, so anything wrong with it is a bug and throws <see cref="InvalidDataException"/>.</remarks>
internal sealed class CsvTable
{
    private const int TypicalFields = 32;
    private static readonly SearchValues<char> Stops = SearchValues.Create(",\n\"\r");

    private readonly string _name;
    private readonly Dictionary<string, int> _columns;

    private CsvTable(string name, ImmutableArray<string> header)
    {
        _name = name;
        Header = header;
        _columns = new Dictionary<string, int>(header.Length, StringComparer.Ordinal);
        foreach (var column in header)
        {
            if (!_columns.TryAdd(column, _columns.Count))
                throw Malformed(1, $"column '{column}' stands twice");
        }
    }

    /// <summary>Names of the columns, in their order.</summary>
    public ImmutableArray<string> Header { get; }

    /// <summary>The records after the header.</summary>
    public ImmutableArray<CsvRow> Rows { get; private set; } = [];

    /// <summary>Reads a whole table.</summary>
    /// <param name="name">What to call it in an exception.</param>
    /// <param name="utf8">The text.</param>
    /// <exception cref="InvalidDataException">The text is no such table.</exception>
    public static CsvTable Parse(string name, ReadOnlySpan<byte> utf8)
    {
        if (!Utf8.IsValid(utf8))
            throw new InvalidDataException($"{name} is not UTF-8");
        var scanner = new CsvScanner(name, Encoding.UTF8.GetString(utf8));
        if (scanner.AtEnd)
            throw new InvalidDataException($"{name} is empty");
        var table = new CsvTable(name, [.. scanner.ReadRecord()]);
        var rows = ImmutableArray.CreateBuilder<CsvRow>();
        while (!scanner.AtEnd)
        {
            var fields = scanner.ReadRecord();
            if (fields.Length != table.Header.Length)
                throw table.Malformed(scanner.Record, $"has {fields.Length} fields, the header {table.Header.Length}");
            rows.Add(new CsvRow(table, fields, scanner.Record));
        }

        table.Rows = rows.DrainToImmutable();
        return table;
    }

    /// <summary>Position of a column.</summary>
    /// <exception cref="InvalidDataException">There is no such column.</exception>
    internal int IndexOf(string column) =>
        _columns.TryGetValue(column, out var index) ? index : throw Malformed(1, $"has no column '{column}'");

    /// <summary>The exception for a bad record.</summary>
    internal InvalidDataException Malformed(int record, string what) => new($"{_name} record {record}: {what}");

    private ref struct CsvScanner(string name, ReadOnlySpan<char> text)
    {
        private readonly ReadOnlySpan<char> _text = text;
        private int _at;

        public readonly bool AtEnd => _at == _text.Length;

        /// <summary>Number of the record read last, from 1 (the header).</summary>
        public int Record { get; private set; }

        public string[] ReadRecord()
        {
            Record++;
            var fields = new List<string>(TypicalFields);
            char delimiter;
            do
            {
                fields.Add(!AtEnd && _text[_at] == '"' ? ReadQuoted() : ReadPlain());
                delimiter = AtEnd ? throw Malformed("does not end with a line feed") : _text[_at++];
                if (delimiter is not (',' or '\n'))
                    throw Malformed($"field {fields.Count} has text beside its quotes, or a carriage return");
            }
            while (delimiter == ',');
            return [.. fields];
        }

        private string ReadPlain()
        {
            var rest = _text[_at..];
            var length = rest.IndexOfAny(Stops);
            var field = length < 0 ? rest : rest[..length];
            _at += field.Length;
            return field.ToString();
        }

        private string ReadQuoted()
        {
            var start = ++_at;
            var doubled = false;
            while (true)
            {
                var length = _text[_at..].IndexOf('"');
                if (length < 0)
                    throw Malformed("has a quote that is never closed");
                _at += length + 1;
                if (AtEnd || _text[_at] != '"')
                    break;
                doubled = true;
                _at++;
            }

            var field = _text[start..(_at - 1)].ToString();
            return doubled ? field.Replace("\"\"", "\"", StringComparison.Ordinal) : field;
        }

        private readonly InvalidDataException Malformed(string what) => new($"{name} record {Record}: {what}");
    }
}
