using System.Text;
using System.Text.Json;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Reads a JSON text once for the line and column of every key, and for its faults.</summary>
/// <remarks>Configuration providers keep values but not places; this keeps the places.</remarks>
internal sealed class JsonPlaces
{
    private const string WholeText = "an object in braces: { … }";

    private readonly Dictionary<string, SourcePlace> _places = new(StringComparer.OrdinalIgnoreCase);
    private readonly string _file;
    private readonly byte[] _text;
    private string? _twice;
    private int _line = 1;
    private int _lineStart;
    private long _token;

    private JsonPlaces(string file, byte[] text)
    {
        _file = file;
        _text = text;
    }

    /// <summary>Every key of the file, in the file's order.</summary>
    public IEnumerable<string> Keys => _places.Keys;

    /// <summary>The place of a key; the place of the nearest enclosing key when this one is not in the file.</summary>
    public SourcePlace this[string key]
    {
        get
        {
            for (var path = key; path.Length > 0; path = Parent(path))
            {
                if (_places.TryGetValue(path, out var place))
                {
                    return place with { Key = key };
                }
            }

            return new SourcePlace(_file, Key: key);
        }
    }

    /// <summary>Reads the text; null, with findings, when it is not one valid JSON object.</summary>
    public static JsonPlaces? Read(string file, byte[] text, FindingLog log)
    {
        var places = new JsonPlaces(file, text);
        var before = log.Count;
        if (text.AsSpan().IndexOfAnyExcept(" \t\r\n"u8) < 0)
        {
            log.Add(ManifestFindings.BadJson, SourcePlace.AtLine(file, 1), "The file is empty.", WholeText);
            return null;
        }

        try
        {
            places.Walk(log);
        }
        catch (JsonException fault)
        {
            log.Add(ManifestFindings.BadJson, places.PlaceOf(fault), $"This is not valid JSON: {Sentence(fault)}");
        }
        catch (InvalidOperationException)
        {
            log.Add(ManifestFindings.BadJson, places.PlaceAt(places._token, ""), "This text is not valid Unicode: it holds half of a character.");
        }

        return log.Count == before ? places : null;
    }

    private void Walk(FindingLog log)
    {
        var reader = new Utf8JsonReader(_text, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        var levels = new Stack<Level>();
        string? path = null;
        var opened = false;
        while (reader.Read())
        {
            _token = reader.TokenStartIndex;
            if (!opened && reader.TokenType != JsonTokenType.StartObject)
            {
                log.Add(ManifestFindings.BadJson, PlaceAt(_token, ""), "The text is a list or a single value.", WholeText);
            }

            opened = true;
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    path = Join(levels.Peek().Path, reader.GetString()!);
                    AddPlace(path, log);
                    break;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    path = levels.Pop().Path;
                    break;
                default:
                    path = ItemPath(levels, path, log);
                    if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                    {
                        levels.Push(new Level(path, reader.TokenType == JsonTokenType.StartArray));
                    }
                    else if (reader.TokenType == JsonTokenType.String)
                    {
                        // Throws on text that is half a character, which no later reading would survive.
                        _ = reader.GetString();
                    }

                    break;
            }
        }
    }

    // The path of a value: its key's, or, inside a list, the list's with the value's number.
    private string? ItemPath(Stack<Level> levels, string? path, FindingLog log)
    {
        if (levels.Count == 0 || !levels.Peek().IsList)
        {
            return path;
        }

        var item = Join(levels.Peek().Path, levels.Peek().Next());
        AddPlace(item, log);
        return item;
    }

    private void AddPlace(string path, FindingLog log)
    {
        // A key given twice is told once, and what stands below it not at all.
        if (!_places.TryAdd(path, PlaceAt(_token, path)) && (_twice is null || !path.StartsWith(_twice + ":", StringComparison.OrdinalIgnoreCase)))
        {
            _twice = path;
            log.Add(ManifestFindings.DuplicateKey, PlaceAt(_token, path), $"The key `{path}` is given twice (letter case does not count).");
        }
    }

    private SourcePlace PlaceAt(long index, string key)
    {
        // Tokens come in ascending order, so each line is counted once.
        var fresh = _text.AsSpan(_lineStart, (int)index - _lineStart);
        _line += fresh.Count((byte)'\n');
        _lineStart += fresh.LastIndexOf((byte)'\n') + 1;
        var column = Encoding.UTF8.GetCharCount(_text.AsSpan(_lineStart, (int)index - _lineStart)) + 1;
        return new SourcePlace(_file, _line, column, key.Length == 0 ? null : key);
    }

    private SourcePlace PlaceOf(JsonException fault)
    {
        var line = (int)(fault.LineNumber ?? 0);
        var bytes = (int)(fault.BytePositionInLine ?? 0);
        var start = 0;
        for (var i = 0; i < line; i++)
        {
            start += _text.AsSpan(start).IndexOf((byte)'\n') + 1;
        }

        var column = Encoding.UTF8.GetCharCount(_text.AsSpan(start, Math.Min(bytes, _text.Length - start))) + 1;
        return new SourcePlace(_file, line + 1, column);
    }

    // The reader's own words end with the place, which the finding already carries.
    private static string Sentence(JsonException fault)
    {
        var words = fault.Message;
        var place = words.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return place < 0 ? words : words[..place];
    }

    // The whole document has no path, which is not the same as the path of a key without a name.
    private static string Join(string? path, string name) => path is null ? name : path + ":" + name;

    private static string Parent(string path) => path[..Math.Max(0, path.LastIndexOf(':'))];

    private sealed class Level(string? path, bool isList)
    {
        private int _count;

        public string? Path => path;

        public bool IsList => isList;

        public string Next() => (_count++).ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
