using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Intellivision;

/// <summary>A text of one word of 16 bits a letter, ended by a word of 0. The program may go on right behind it: those bytes are not the field's.</summary>
public sealed class WordTextCodec : FieldCodec
{
    /// <summary>Most letters a text can have here.</summary>
    public const int MostLetters = 40;

    private const string RawMark = "hex ";
    private const char First = ' ';
    private const char Last = '~';

    /// <inheritdoc/>
    public override string Expected => "text of printable ASCII (space to tilde)";

    /// <summary>The text at the start of a run of bytes; null when it has no end or holds other words than letters.</summary>
    /// <param name="bytes">The bytes from the text's first word on.</param>
    public static string? Text(ReadOnlySpan<byte> bytes)
    {
        var letters = new List<char>();
        for (var at = 0; at + IntvHeader.WordLength <= bytes.Length; at += IntvHeader.WordLength)
        {
            var word = (char)BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
            if (word == 0)
            {
                return new string([.. letters]);
            }

            if (word is < First or > Last)
            {
                return null;
            }

            letters.Add(word);
        }

        return null;
    }

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => Text(field) ?? RawMark + Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (text.StartsWith(RawMark, StringComparison.Ordinal) && text.Length == RawMark.Length + (2 * field.Length))
        {
            return new BytesCodec(field.Length).Write(text[RawMark.Length..], field);
        }

        if (text.Length >= field.Length / IntvHeader.WordLength)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it has {text.Length} letters and at most {(field.Length / IntvHeader.WordLength) - 1} are possible");
        }

        if (text.AsSpan().IndexOfAnyExceptInRange(First, Last) is >= 0 and var wrong)
        {
            return $"the letter `{text[wrong]}` is not printable ASCII";
        }

        for (var i = 0; i <= text.Length; i++)
        {
            BinaryPrimitives.WriteUInt16BigEndian(field[(i * IntvHeader.WordLength)..], i < text.Length ? text[i] : (ushort)0);
        }

        return null;
    }

    /// <inheritdoc/>
    public override int Reach(ReadOnlySpan<byte> field) => Text(field) is { } text ? (text.Length + 1) * IntvHeader.WordLength : field.Length;

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.Ordinal);
}
