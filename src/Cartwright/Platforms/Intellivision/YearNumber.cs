using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Intellivision;

/// <summary>A year, stored less 1900.</summary>
public sealed class YearNumber : ValueText
{
    /// <summary>The year that is stored as 0.</summary>
    public const int First = 1900;

    /// <inheritdoc/>
    public override ValueForm Form => ValueForm.Number;

    /// <inheritdoc/>
    public override string Expected => "a year such as 2026";

    /// <inheritdoc/>
    public override string Format(ulong value) => (First + value).ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value)
    {
        var isYear = ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var year) && year >= First;
        value = isYear ? year - First : 0;
        return isYear;
    }
}
