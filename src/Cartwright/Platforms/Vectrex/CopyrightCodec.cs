using System.Text;
using Cartwright.Headers;

namespace Cartwright.Platforms.Vectrex;

/// <summary>The copyright text that the BIOS looks for, as its year: <c>g GCE 1998</c> and 80, where <c>g</c> is drawn as the copyright sign.</summary>
public sealed class CopyrightCodec : FieldCodec
{
    /// <summary>Bytes of the text.</summary>
    public const int Length = 11;

    private const string RawMark = "hex ";
    private const int YearDigits = 4;

    /// <summary>What the BIOS looks for.</summary>
    public static ReadOnlySpan<byte> Mark => "g GCE"u8;

    /// <inheritdoc/>
    public override string Expected => "a year of four digits";

    /// <summary>Whether a text is in the usual form.</summary>
    /// <param name="field">The ROM's first bytes.</param>
    public static bool IsUsual(ReadOnlySpan<byte> field) =>
        field.Length >= Length && field.StartsWith(Mark) && field[Mark.Length] == ' ' && field[Length - 1] == TitleText.EndOfText
        && field.Slice(Mark.Length + 1, YearDigits).IndexOfAnyExceptInRange((byte)'0', (byte)'9') < 0;

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) =>
        IsUsual(field) ? Encoding.ASCII.GetString(field.Slice(Mark.Length + 1, YearDigits)) : RawMark + Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (text.StartsWith(RawMark, StringComparison.Ordinal))
        {
            return new BytesCodec(field.Length).Write(text[RawMark.Length..], field);
        }

        if (text.Length != YearDigits || text.AsSpan().IndexOfAnyExceptInRange('0', '9') >= 0)
        {
            return "it is no year of four digits";
        }

        Mark.CopyTo(field);
        field[Mark.Length] = (byte)' ';
        Encoding.ASCII.GetBytes(text, field[(Mark.Length + 1)..]);
        field[Length - 1] = TitleText.EndOfText;
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.Ordinal);
}
