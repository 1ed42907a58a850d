using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Production;

/// <summary>Writes serial numbers in digits, with their check digits.</summary>
public static class SerialText
{
    private const int Mod97 = 97;
    private const int Mod97Digits = 2;

    /// <summary>A serial number in the digits of its field.</summary>
    /// <param name="serial">The number, 0 or more.</param>
    /// <param name="field">The field.</param>
    /// <returns>Null where the field is too narrow for it.</returns>
    public static string? Write(long serial, UnitField field)
    {
        var digits = field.Width - CheckLength(field.Check);
        var radix = field.Alphabet.Length;
        Span<char> text = stackalloc char[Math.Max(0, digits)];
        for (var i = digits - 1; i >= 0; i--)
        {
            text[i] = field.Alphabet[(int)(serial % radix)];
            serial /= radix;
        }

        return serial > 0 || digits < 1 ? null : text.ToString() + CheckOf(text, field);
    }

    /// <summary>Why a check digit cannot be computed in a field's digits; null where it can.</summary>
    /// <param name="field">The field.</param>
    public static string? Problem(UnitField field) => field.Check switch
    {
        CheckDigit.Luhn when field.Alphabet.Length % 2 != 0 => "the Luhn formula needs an even number of digits",
        CheckDigit.Mod97 when field.Alphabet != UnitField.TenDigits => "MOD 97-10 needs decimal digits",
        _ => null,
    };

    private static int CheckLength(CheckDigit check) => check switch
    {
        CheckDigit.Luhn => 1,
        CheckDigit.Mod97 => Mod97Digits,
        _ => 0,
    };

    private static string CheckOf(ReadOnlySpan<char> digits, UnitField field) => field.Check switch
    {
        CheckDigit.Luhn => field.Alphabet[Luhn(digits, field.Alphabet)].ToString(),
        CheckDigit.Mod97 => Remainder97(digits).ToString("D2", CultureInfo.InvariantCulture),
        _ => "",
    };

    // ISO/IEC 7812-1, Annex B, for ten digits; the same steps in any even radix are known as Luhn mod N (common practice).
    private static int Luhn(ReadOnlySpan<char> digits, string alphabet)
    {
        var radix = alphabet.Length;
        var sum = 0;
        for (var i = 0; i < digits.Length; i++)
        {
            var value = alphabet.IndexOf(digits[i], StringComparison.Ordinal);
            var weighted = (digits.Length - i) % 2 == 1 ? 2 * value : value;
            sum += (weighted / radix) + (weighted % radix);
        }

        return (radix - (sum % radix)) % radix;
    }

    // ISO/IEC 7064, MOD 97-10: the number with its check digits leaves 1.
    private static int Remainder97(ReadOnlySpan<char> digits)
    {
        var rest = 0;
        foreach (var digit in digits)
        {
            rest = ((rest * 10) + (digit - '0')) % Mod97;
        }

        return Mod97 + 1 - (rest * 100 % Mod97);
    }
}
