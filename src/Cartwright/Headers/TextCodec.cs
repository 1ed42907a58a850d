using System.Globalization;

namespace Cartwright.Headers;

/// <summary>A field of single-byte text, filled up behind with one value.</summary>
/// <param name="pad">The value behind the text: usually 0x20 or 0x00.</param>
/// <param name="first">Smallest byte a letter may be.</param>
/// <param name="last">Largest byte a letter may be.</param>
/// <param name="letters">The letters in words, for messages.</param>
/// <param name="endsInBlanks">True where text that ends in spaces is still read as text; otherwise it is shown as bytes, unless the pad is the space.</param>
public sealed class TextCodec(byte pad, byte first = 0x20, byte last = 0x7E, string letters = "printable ASCII (space to tilde)", bool endsInBlanks = false) : FieldCodec
{
    private const string RawMark = "hex ";

    /// <inheritdoc/>
    public override string Expected => $"text of {letters}";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        var text = field.TrimEnd(pad);
        // Text that could not be written back the same is shown as bytes instead.
        return text.IndexOfAnyExceptInRange(first, last) >= 0 || (pad != 0x20 && !endsInBlanks && text.EndsWith(" "u8))
            ? RawMark + Convert.ToHexString(field)
            : System.Text.Encoding.Latin1.GetString(text);
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (text.StartsWith(RawMark, StringComparison.Ordinal) && text.Length == RawMark.Length + (field.Length * 2) && text.AsSpan(RawMark.Length).IndexOfAnyExcept(HexDigits) < 0)
        {
            return Convert.FromHexString(text.AsSpan(RawMark.Length), field, out _, out _) == System.Buffers.OperationStatus.Done ? null : "its hexadecimal digits are damaged";
        }

        if (text.Length > field.Length)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it has {text.Length} letters and the field holds {field.Length}");
        }

        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] < first || text[i] > last)
            {
                return $"the letter `{text[i]}` (number {(i + 1).ToString(CultureInfo.InvariantCulture)}) is not {letters}";
            }
        }

        System.Text.Encoding.Latin1.GetBytes(text, field);
        field[text.Length..].Fill(pad);
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool IsBlank(ReadOnlySpan<byte> field, byte fill) =>
        base.IsBlank(field, fill) || !field.ContainsAnyExcept(pad);

    private static readonly System.Buffers.SearchValues<char> HexDigits = System.Buffers.SearchValues.Create("0123456789ABCDEFabcdef");
}
