using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>Text in the display codes of the big letters: ATASCII less 0x20 in bits 5-0. Bits 7-6 are a letter's colour and are left alone.</summary>
internal sealed class DisplayTextCodec : FieldCodec
{
    private const byte Codes = 0x3F;
    private const char First = ' ';
    private const char Last = '_';

    /// <inheritdoc/>
    public override string Expected => "text of capital letters, digits and the marks from space to underscore";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        var letters = new char[field.Length];
        for (var i = 0; i < letters.Length; i++)
        {
            letters[i] = (char)((field[i] & Codes) + First);
        }

        return new string(letters).TrimEnd(First);
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (text.Length > field.Length)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it has {text.Length} letters and the field holds {field.Length}");
        }

        for (var i = 0; i < text.Length; i++)
        {
            if (Big(text[i]) is < First or > Last)
            {
                return string.Create(CultureInfo.InvariantCulture, $"the letter `{text[i]}` (number {i + 1}) is none of those the console shows");
            }
        }

        for (var i = 0; i < field.Length; i++)
        {
            var code = i < text.Length ? Big(text[i]) - First : 0;
            field[i] = (byte)((field[i] & ~Codes) | code);
        }

        return null;
    }

    /// <inheritdoc/>
    public override void Mask(Span<byte> field) => field.Fill(Codes);

    // There are no small letters in this alphabet.
    private static char Big(char letter) => letter is >= 'a' and <= 'z' ? (char)(letter - ' ') : letter;
}
