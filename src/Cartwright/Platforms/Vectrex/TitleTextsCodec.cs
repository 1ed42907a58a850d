using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Vectrex;

/// <summary>
/// The texts of the title screen: height, width, y, x and letters of each, with <c>|</c> between. A single text without numbers keeps the place
/// the program gave it, or has the usual one. The program goes on right behind the 00 that ends the texts: those bytes are not the field's.
/// </summary>
public sealed class TitleTextsCodec : FieldCodec
{
    /// <summary>Most bytes the texts can have here.</summary>
    public const int Longest = 0x73;

    private const string RawMark = "hex ";
    private const string Between = " | ";

    // Common practice: letters of this size, the text in the left half of the screen.
    private static readonly TitleText Usual = new(-8, 80, 32, -86, "");

    /// <inheritdoc/>
    public override string Expected => "a title in upper case such as LANTERN TIDE, or texts with height, width, y and x before each, such as `-8 80 32 -86 LANTERN TIDE | -8 80 0 -86 QUILLMOOR`";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        var texts = new List<TitleText>();
        return TitleTexts.Read(field, texts) is not null && texts.TrueForAll(static text => TitleTexts.CanBeDrawn(text.Text))
            ? string.Join(Between, texts.Select(static text => string.Create(CultureInfo.InvariantCulture, $"{text.Height} {text.Width} {text.Y} {text.X} {text.Text}")))
            : RawMark + Convert.ToHexString(field);
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (text.StartsWith(RawMark, StringComparison.Ordinal))
        {
            return new BytesCodec(field.Length).Write(text[RawMark.Length..], field);
        }

        var held = new List<TitleText>();
        if (TitleTexts.Read(field, held) is null)
        {
            held.Clear();
        }

        // A title that the program shows already stays among its other texts.
        if (text.Length > 0 && held.Exists(row => row.Text == text))
        {
            return null;
        }

        var texts = new List<TitleText>();
        foreach (var part in text.Length == 0 ? [] : text.Split(Between))
        {
            texts.Add(Numbered(part) ?? (held.Count > 0 ? held[0] : Usual) with { Text = part.Trim() });
        }

        if (!texts.TrueForAll(static row => TitleTexts.CanBeDrawn(row.Text)))
        {
            return "the console draws upper case only, the characters 20 to 5F";
        }

        if (TitleTexts.LengthOf(texts) > field.Length)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it takes {TitleTexts.LengthOf(texts)} bytes, and at most {field.Length} are possible");
        }

        TitleTexts.Write(texts, field);
        return null;
    }

    /// <inheritdoc/>
    public override int Reach(ReadOnlySpan<byte> field) => TitleTexts.Read(field, []) ?? field.Length;

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.Ordinal);

    private static TitleText? Numbered(string part)
    {
        var words = part.Split(' ', TitleText.Numbers + 1);
        Span<sbyte> numbers = stackalloc sbyte[TitleText.Numbers];
        for (var i = 0; i < numbers.Length; i++)
        {
            if (words.Length <= numbers.Length || !sbyte.TryParse(words[i], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out numbers[i]) || (i == 0 && numbers[i] == 0))
            {
                return null;
            }
        }

        return new TitleText(numbers[0], numbers[1], numbers[2], numbers[3], words[^1]);
    }
}
