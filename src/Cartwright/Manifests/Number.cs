using System.Globalization;

namespace Cartwright.Manifests;

/// <summary>Whole numbers as people write them: decimal, or hexadecimal after <c>0x</c> or <c>$</c>.</summary>
public static class Number
{
    /// <summary>Reads a number of 0 or more.</summary>
    /// <param name="text">Decimal digits, or hexadecimal digits after <c>0x</c> or <c>$</c>; underscores between digits are allowed.</param>
    /// <param name="value">The number.</param>
    /// <returns>False when the text is no number or is larger than 2^63 - 1.</returns>
    public static bool TryParse(string text, out long value)
    {
        var read = TryParse(text, out ulong number) && number <= long.MaxValue;
        value = read ? (long)number : 0;
        return read;
    }

    /// <summary>Reads a number of up to 64 bits, as a field of eight bytes holds it.</summary>
    /// <param name="text">As above.</param>
    /// <param name="value">The number.</param>
    /// <returns>False when the text is no number or is larger than 2^64 - 1.</returns>
    public static bool TryParse(string text, out ulong value)
    {
        var digits = text.Trim().Replace("_", "", StringComparison.Ordinal);
        return HexDigits(digits) is { } hex
            ? ulong.TryParse(hex, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out value)
            : ulong.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }

    /// <summary>A number in hexadecimal, as <see cref="TryParse(string, out long)"/> reads it.</summary>
    /// <param name="value">The number.</param>
    /// <param name="digits">Fewest digits.</param>
    public static string Hex(long value, int digits) => "0x" + value.ToString("X" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>The digits of a hexadecimal number without its mark, or null when the text is not marked as one.</summary>
    /// <param name="text">The text to look at.</param>
    public static string? HexDigits(string text) =>
        text.StartsWith("0x", StringComparison.OrdinalIgnoreCase) ? text[2..]
        : text.StartsWith('$') ? text[1..]
        : null;
}
