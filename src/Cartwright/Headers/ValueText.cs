using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Headers;

/// <summary>How a number of a header is written for people.</summary>
public abstract class ValueText
{
    /// <summary>The words it can be; empty when it is a plain number or a size.</summary>
    public virtual ImmutableArray<NamedValue> Names => [];

    /// <summary>What may be written besides the words, for tools that check a manifest before it is built.</summary>
    public virtual ValueForm Form => ValueForm.Free;

    /// <summary>What may be written, for messages.</summary>
    public abstract string Expected { get; }

    /// <summary>Writes the number as text; never fails: what has no name is written raw, as <c>0x1B</c>.</summary>
    /// <param name="value">The number.</param>
    public abstract string Format(ulong value);

    /// <summary>Reads the text.</summary>
    /// <param name="text">A name, a number in the row's own form, or raw hexadecimal such as <c>0x1B</c>.</param>
    /// <param name="value">The number.</param>
    public abstract bool TryParse(string text, out ulong value);

    /// <summary>Whether the text is the raw form; hexadecimal unless the row's own form is.</summary>
    /// <param name="text">The text.</param>
    public virtual bool IsRaw(string text) => Number.HexDigits(text.Trim()) is not null;

    /// <summary>The raw form.</summary>
    /// <param name="value">The number.</param>
    protected static string Raw(ulong value) => string.Create(CultureInfo.InvariantCulture, $"0x{value:X2}");

    /// <summary>Reads the raw form only.</summary>
    /// <param name="text">The text.</param>
    /// <param name="value">The number.</param>
    protected static bool TryParseRaw(string text, out ulong value)
    {
        value = 0;
        return Number.HexDigits(text.Trim()) is { } digits
            && ulong.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out value);
    }
}
