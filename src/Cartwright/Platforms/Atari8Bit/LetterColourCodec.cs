using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The colours of big letters, 0 to 3, in bits 7-6 of each: one digit for all, or a digit a letter.</summary>
internal sealed class LetterColourCodec : FieldCodec
{
    private const byte Colours = 0xC0;
    private const int Shift = 6;

    /// <inheritdoc/>
    public override string Expected => "a digit from 0 to 3, or one for each letter";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        var digits = new char[field.Length];
        for (var i = 0; i < digits.Length; i++)
        {
            digits[i] = (char)('0' + (field[i] >> Shift));
        }

        return digits.AsSpan().ContainsAnyExcept(digits[0]) ? new string(digits) : digits[0].ToString();
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if ((text.Length != 1 && text.Length != field.Length) || text.AsSpan().ContainsAnyExceptInRange('0', '3'))
        {
            return string.Create(CultureInfo.InvariantCulture, $"it is neither one digit from 0 to 3 nor {field.Length} of them");
        }

        for (var i = 0; i < field.Length; i++)
        {
            var digit = text[text.Length == 1 ? 0 : i];
            field[i] = (byte)((field[i] & ~Colours) | ((digit - '0') << Shift));
        }

        return null;
    }

    /// <inheritdoc/>
    public override void Mask(Span<byte> field) => field.Fill(Colours);
}
