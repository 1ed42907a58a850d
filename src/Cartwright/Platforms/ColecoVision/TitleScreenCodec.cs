using System.Globalization;
using System.Text;
using Cartwright.Headers;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>
/// The text of the BIOS's title screen: the second line, the first line and a year of four digits, with <c>/</c> between. Nothing ends it
/// but the year's last digit, and the program may go on right behind it: those bytes are not the field's
/// (Cartridge header technical information).
/// </summary>
public sealed class TitleScreenCodec : FieldCodec
{
    /// <summary>Most bytes the text can have here; about 60 is what the screen shows.</summary>
    public const int Longest = 64;

    private const string RawMark = "hex ";
    private const byte Copyright = 0x1D;
    private const byte Last = 0x7E;
    private const int YearDigits = 4;

    /// <inheritdoc/>
    public override string Expected => "text such as LANTERN TIDE/QUILLMOOR PRESENTS/2026: second line, first line, year of four digits";

    /// <summary>Bytes of the text at the start of a run; null when there is none of that form.</summary>
    /// <param name="bytes">The bytes from the text's first on.</param>
    public static int? LengthOf(ReadOnlySpan<byte> bytes)
    {
        var first = bytes.IndexOf((byte)'/');
        var second = first < 0 ? -1 : bytes[(first + 1)..].IndexOf((byte)'/');
        var length = first + 1 + second + 1 + YearDigits;
        return second >= 0 && length <= Math.Min(bytes.Length, Longest)
            && bytes[..length].IndexOfAnyExceptInRange(Copyright, Last) < 0
            && bytes[(length - YearDigits)..length].IndexOfAnyExceptInRange((byte)'0', (byte)'9') < 0
                ? length
                : null;
    }

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        if (LengthOf(field) is not { } length)
        {
            return RawMark + Convert.ToHexString(field);
        }

        var text = Encoding.Latin1.GetString(field[..length]).Replace("\u001E\u001F", "\u2122", StringComparison.Ordinal).Replace('\u001D', '\u00A9');
        // Half a trade mark has no letter of its own.
        return text.AsSpan().ContainsAny('\u001E', '\u001F') ? RawMark + Convert.ToHexString(field) : text;
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (text.StartsWith(RawMark, StringComparison.Ordinal) && text.Length == RawMark.Length + (2 * field.Length))
        {
            return new BytesCodec(field.Length).Write(text[RawMark.Length..], field);
        }

        var plain = text.Replace("\u2122", "\u001E\u001F", StringComparison.Ordinal).Replace('\u00A9', '\u001D');
        if (plain.Length > field.Length)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it has {plain.Length} letters and at most {field.Length} are possible");
        }

        var wrong = plain.AsSpan().IndexOfAnyExceptInRange((char)Copyright, (char)Last);
        if (wrong >= 0)
        {
            return $"the letter `{plain[wrong]}` is not in the console's set";
        }

        var bytes = Encoding.Latin1.GetBytes(plain);
        if (LengthOf(bytes) != bytes.Length)
        {
            return "it is not two texts and a year of four digits with `/` between";
        }

        bytes.CopyTo(field);
        return null;
    }

    /// <inheritdoc/>
    public override int Reach(ReadOnlySpan<byte> field) => LengthOf(field) ?? field.Length;

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.Ordinal);
}
