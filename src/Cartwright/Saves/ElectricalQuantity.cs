using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Cartwright.Saves;

/// <summary>A kind of quantity as people write it, a number and its unit: <c>225mAh</c>, <c>3 uA</c>.</summary>
/// <param name="Name">What it is called in messages.</param>
/// <param name="Example">How it is written.</param>
/// <param name="Least">Smallest value that is read, in the base unit.</param>
/// <param name="Most">Largest value that is read, in the base unit.</param>
/// <param name="Units">Its units.</param>
public sealed record ElectricalQuantity(string Name, string Example, decimal Least, decimal Most, ImmutableArray<ElectricalUnit> Units)
{
    private static readonly SearchValues<char> NumberCharacters = SearchValues.Create("0123456789.");

    /// <summary>An electric charge, in ampere-hours.</summary>
    public static ElectricalQuantity Charge { get; } = new("capacity", "225mAh or 0.225Ah", 0.000_001m, 1000m, [new("mAh", 0.001m), new("Ah", 1m)]);

    /// <summary>An electric current, in amperes. A micro sign (U+00B5), a Greek mu (U+03BC) and the letter u are one.</summary>
    public static ElectricalQuantity Current { get; } = new("current", "3uA or 0.003mA", 0.000_000_000_001m, 1m,
        [new("nA", 0.000_000_001m), new("uA", 0.000_001m), new("\u00B5A", 0.000_001m), new("\u03BCA", 0.000_001m), new("mA", 0.001m), new("A", 1m)]);

    /// <summary>What it may look like, for messages.</summary>
    public string Expected => $"a {Name} such as {Example}, its unit one of {string.Join(", ", Units.Select(static unit => unit.Symbol).Where(static symbol => Ascii.IsValid(symbol)))}";

    /// <summary>Reads a quantity.</summary>
    /// <param name="text">A decimal number and one of the units, with or without a blank between them.</param>
    /// <returns>The value in the base unit; null when the text is none, or lies outside <see cref="Least"/> and <see cref="Most"/>.</returns>
    public decimal? Parse(string text)
    {
        var trimmed = text.Trim();
        var number = trimmed.AsSpan().IndexOfAnyExcept(NumberCharacters) is > 0 and var end ? trimmed[..end] : "";
        var symbol = trimmed[number.Length..].TrimStart(' ');
        return Units.FirstOrDefault(unit => unit.Symbol == symbol) is { Symbol: not null } unit
            && decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            && value <= Most / unit.Factor
            && value * unit.Factor >= Least
            ? value * unit.Factor
            : null;
    }
}
