using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>
/// A number that stands for one of a list of things. The first row of a number gives its name on reading; further rows of the same number
/// are other spellings. A name that two numbers have stands for the first of them, and the other is read raw.
/// </summary>
/// <param name="names">The list.</param>
public sealed class NamedValues(params ImmutableArray<NamedValue> names) : ValueText
{
    /// <summary>A yes or no.</summary>
    public static NamedValues Truth { get; } = new(new NamedValue(0, "false"), new NamedValue(1, "true"));

    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names => names;

    /// <inheritdoc/>
    public override ValueForm Form => ValueForm.Code;

    /// <inheritdoc/>
    public override string Expected => $"one of {string.Join(", ", names.Select(static row => row.Name))}, or the raw value such as 0x1B";

    /// <inheritdoc/>
    public override string Format(ulong value) => names.FirstOrDefault(row => row.Value == value) is { } named && Named(named.Name)!.Value == value ? named.Name : Raw(value);

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value)
    {
        var row = Named(text.Trim());
        value = row?.Value ?? 0;
        return row is not null || TryParseRaw(text, out value);
    }

    private NamedValue? Named(string name) => names.FirstOrDefault(row => string.Equals(row.Name, name, StringComparison.OrdinalIgnoreCase));
}
