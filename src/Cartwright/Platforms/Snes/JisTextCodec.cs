using System.Buffers;
using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Snes;

/// <summary>Text of JIS X 0201: a byte a letter, ASCII and half-width kana, filled up behind with spaces.</summary>
public sealed class JisTextCodec : FieldCodec
{
    private const byte Pad = 0x20;
    private const string RawMark = "hex ";

    // Bytes $A1 to $DF are the half-width kana, which Unicode has in the same order from U+FF61.
    private const byte FirstKana = 0xA1;
    private const byte LastKana = 0xDF;
    private const char FirstKanaLetter = '\uFF61';

    private static readonly SearchValues<byte> Letters = SearchValues.Create(
        [.. Enumerable.Range(0x20, 0x7F - 0x20).Concat(Enumerable.Range(FirstKana, LastKana - FirstKana + 1)).Select(static value => (byte)value)]);

    private static readonly SearchValues<char> HexDigits = SearchValues.Create("0123456789ABCDEFabcdef");

    /// <inheritdoc/>
    public override string Expected => "text of ASCII letters (space to tilde) and half-width kana";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) =>
        IsText(field) ? string.Concat(field.TrimEnd(Pad).ToArray().Select(Letter)) : RawMark + Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (text.StartsWith(RawMark, StringComparison.Ordinal) && text.Length == RawMark.Length + (field.Length * 2) && text.AsSpan(RawMark.Length).IndexOfAnyExcept(HexDigits) < 0)
        {
            _ = Convert.FromHexString(text.AsSpan(RawMark.Length), field, out _, out _);
            return null;
        }

        if (text.Length > field.Length)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it has {text.Length} letters and the field holds {field.Length}");
        }

        for (var i = 0; i < text.Length; i++)
        {
            if (Code(text[i]) is null)
            {
                return $"the letter `{text[i]}` (number {(i + 1).ToString(CultureInfo.InvariantCulture)}) is neither ASCII nor half-width kana";
            }
        }

        field.Fill(Pad);
        for (var i = 0; i < text.Length; i++)
        {
            field[i] = Code(text[i])!.Value;
        }

        return null;
    }

    /// <inheritdoc/>
    public override bool IsBlank(ReadOnlySpan<byte> field, byte fill) => base.IsBlank(field, fill) || !field.ContainsAnyExcept(Pad);

    internal static bool IsText(ReadOnlySpan<byte> bytes) => !bytes.ContainsAnyExcept(Letters);

    private static char Letter(byte code) => code < FirstKana ? (char)code : (char)(code - FirstKana + FirstKanaLetter);

    private static byte? Code(char letter) => letter switch
    {
        >= ' ' and <= '~' => (byte)letter,
        >= FirstKanaLetter and <= (char)(LastKana - FirstKana + FirstKanaLetter) => (byte)(letter - FirstKanaLetter + FirstKana),
        _ => null,
    };
}
