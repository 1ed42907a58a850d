using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>A part of a document: its keys read with types, and what is wrong with them said as findings.</summary>
public readonly record struct ManifestSection
{
    private readonly ManifestDocument _document;

    internal ManifestSection(ManifestDocument document, string path)
    {
        _document = document;
        Path = path;
    }

    /// <summary>The section's own key, its parts joined by colons; empty for the whole document.</summary>
    public string Path { get; }

    /// <summary>The section's last name.</summary>
    public string Name => Path[(Path.LastIndexOf(':') + 1)..];

    /// <summary>Where the section stands.</summary>
    public SourcePlace Place => _document.Place(Path);

    /// <summary>True when nothing at all stands under this key.</summary>
    public bool IsAbsent => _document.Text(Path) is null && !HasChildren;

    private bool HasChildren => !_document.Children(Path).IsEmpty;

    /// <summary>The section under a key.</summary>
    /// <param name="key">One name, or several joined by colons.</param>
    public ManifestSection this[string key] => new(_document, Path.Length == 0 ? key : Path + ":" + key);

    /// <summary>The names directly below, in the document's order of names.</summary>
    public ImmutableArray<string> Names => _document.Children(Path);

    /// <summary>The sections directly below: a list's items, or an object's members.</summary>
    public IEnumerable<ManifestSection> Sections
    {
        get
        {
            var self = this;
            return Names.Select(name => self[name]);
        }
    }

    /// <summary>The section's own value; null when there is none.</summary>
    public ManifestValue? Value => _document.Text(Path) is { } text ? new ManifestValue(text, Place) : null;

    /// <summary>A text.</summary>
    /// <param name="key">The key below this section.</param>
    /// <param name="log">Receives a finding when the value is a list or an object.</param>
    /// <param name="required">True when it must be there.</param>
    public ManifestValue? Text(string key, FindingLog log, bool required = false)
    {
        var section = this[key];
        if (section.Value is { } value && (value.Text.Length > 0 || !required))
        {
            return value.Text.Length == 0 && section.HasChildren ? section.Refuse("one value", log) : value;
        }

        if (section.HasChildren)
        {
            return section.Refuse("one value", log);
        }

        if (required)
        {
            log.Add(ManifestFindings.MissingKey, Place with { Key = section.Path }, $"The key `{section.Path}` is missing.");
        }

        return null;
    }

    /// <summary>A size in bytes.</summary>
    /// <param name="key">The key below this section.</param>
    /// <param name="log">Receives a finding when it is no size.</param>
    public long? Size(string key, FindingLog log) => Typed<long>(key, log, ByteSize.Forms, ByteSize.TryParse);

    /// <summary>A whole number of 0 or more.</summary>
    /// <param name="key">The key below this section.</param>
    /// <param name="log">Receives a finding when it is no number.</param>
    public long? Number(string key, FindingLog log) => Typed<long>(key, log, "a number such as 32768, 0x8000 or $8000", Manifests.Number.TryParse);

    /// <summary>A number with a fraction, 0 or more.</summary>
    /// <param name="key">The key below this section.</param>
    /// <param name="log">Receives a finding when it is no number.</param>
    public double? Fraction(string key, FindingLog log) => Typed(key, log, "a number such as 5 or 3.3",
        static (string text, out double value) => double.TryParse(text, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out value) && double.IsFinite(value));

    /// <summary>True or false.</summary>
    /// <param name="key">The key below this section.</param>
    /// <param name="log">Receives a finding when it is neither.</param>
    public bool? Truth(string key, FindingLog log) => Typed(key, log, "true or false", static (string text, out bool value) => bool.TryParse(text, out value));

    /// <summary>One byte.</summary>
    /// <param name="key">The key below this section.</param>
    /// <param name="log">Receives a finding when it is no byte.</param>
    public byte? Byte(string key, FindingLog log) => Typed(key, log, "a byte from 0x00 to 0xFF",
        static (string text, out byte value) =>
        {
            var read = Manifests.Number.TryParse(text, out long number) && number <= 0xFF;
            value = (byte)(read ? number : 0);
            return read;
        });

    /// <summary>One of a set of words.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="key">The key below this section.</param>
    /// <param name="words">The words and their meanings.</param>
    /// <param name="log">Receives a finding when it is none of them.</param>
    public T? Choice<T>(string key, IReadOnlyDictionary<string, T> words, FindingLog log)
        where T : struct =>
        Text(key, log) is { } value ? Meaning(value, words, log) : null;

    /// <summary>A list of words of a set, each once; a single word counts as a list of one.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="key">The key below this section.</param>
    /// <param name="words">The words and their meanings.</param>
    /// <param name="log">Receives a finding for each that is none of them.</param>
    public ImmutableArray<T> Choices<T>(string key, IReadOnlyDictionary<string, T> words, FindingLog log)
        where T : struct =>
        [.. Texts(key, log).Select(value => Meaning(value, words, log)).OfType<T>().Distinct()];

    /// <summary>A list of texts; a single text counts as a list of one.</summary>
    /// <param name="key">The key below this section.</param>
    /// <param name="log">Receives a finding for each item that is no text.</param>
    public ImmutableArray<ManifestValue> Texts(string key, FindingLog log)
    {
        var section = this[key];
        if (section.Value is { Text.Length: > 0 } single)
        {
            return [single];
        }

        var texts = ImmutableArray.CreateBuilder<ManifestValue>();
        foreach (var name in section.Names)
        {
            if (section.Text(name, log, required: true) is { } text)
            {
                texts.Add(text);
            }
        }

        return texts.ToImmutable();
    }

    private static T? Meaning<T>(ManifestValue value, IReadOnlyDictionary<string, T> words, FindingLog log)
        where T : struct
    {
        if (words.TryGetValue(value.Text, out var meaning))
        {
            return meaning;
        }

        log.Add(ManifestFindings.BadValue, value.Place, $"`{value.Text}` is not a value `{value.Place.Key}` can have.",
            $"one of {string.Join(", ", words.Keys)}", NearestName.Question(value.Text, words.Keys));
        return null;
    }

    private ManifestValue? Refuse(string expected, FindingLog log)
    {
        log.Add(ManifestFindings.WrongType, Place, $"`{Path}` is a list or a group of keys.", expected);
        return null;
    }

    private delegate bool Parser<T>(string text, out T value);

    private T? Typed<T>(string key, FindingLog log, string expected, Parser<T> parse)
        where T : struct
    {
        if (Text(key, log) is not { } value)
        {
            return null;
        }

        if (parse(value.Text, out var typed))
        {
            return typed;
        }

        log.Add(ManifestFindings.WrongType, value.Place, $"`{value.Text}` is no value for `{this[key].Path}`.", expected);
        return null;
    }
}
