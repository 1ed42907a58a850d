using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Headers;

/// <summary>A number that stands for itself.</summary>
/// <param name="hexDigits">How many hexadecimal digits it is written with; 0 for decimal.</param>
public sealed class PlainNumber(int hexDigits = 0) : ValueText
{
    /// <summary>A decimal number.</summary>
    public static PlainNumber InDecimal { get; } = new();

    /// <inheritdoc/>
    public override ValueForm Form => ValueForm.Number;

    /// <inheritdoc/>
    public override string Expected => hexDigits > 0 ? "a number such as $00FF0000 or 0x1B" : "a number such as 1 or 0x1B";

    /// <inheritdoc/>
    public override string Format(ulong value) => hexDigits > 0
        ? "0x" + value.ToString("X" + hexDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        : value.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value) => Number.TryParse(text, out value);
}
