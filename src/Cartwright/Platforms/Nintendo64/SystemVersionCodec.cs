using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The version of the system library a program was linked with: <c>2.0L</c> is 00 00 14 4C (N64brew Wiki, ROM Header).</summary>
internal sealed class SystemVersionCodec : FieldCodec
{
    /// <summary>The word for four zero bytes.</summary>
    public const string None = "none";

    private const int Length = 4;

    private static readonly BytesCodec Raw = new(Length);

    /// <inheritdoc/>
    public override string Expected => $"a version such as `2.0L`, `{None}`, or {Raw.Expected}";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) =>
        !field.ContainsAnyExcept((byte)0) ? None
        : field is [0, 0, var number, var letter] && char.IsAsciiLetter((char)letter) ? string.Create(CultureInfo.InvariantCulture, $"{number / 10}.{number % 10}{(char)letter}")
        : Raw.Read(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (string.Equals(text, None, StringComparison.OrdinalIgnoreCase))
        {
            field.Clear();
            return null;
        }

        var point = text.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? Raw.Write(text, field)
            : text.Length == point + 3 && char.IsAsciiLetter(text[^1]) && char.IsAsciiDigit(text[^2])
                && int.TryParse(text.AsSpan(0, point), NumberStyles.None, CultureInfo.InvariantCulture, out var major) && major <= 25
                && (major * 10) + (text[^2] - '0') is <= byte.MaxValue and var number ? Write(field, (byte)number, (byte)text[^1])
            : "it is not a number, a point, a digit and a letter, at most 25.5 and the letter";
    }

    private static string? Write(Span<byte> field, byte number, byte letter)
    {
        (field[0], field[1], field[2], field[3]) = (0, 0, number, letter);
        return null;
    }
}
