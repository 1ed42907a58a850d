using System.Text;

namespace Cartwright.Platforms.Vectrex;

/// <summary>The texts of a header as they lie in the ROM.</summary>
internal static class TitleTexts
{
    /// <summary>Reads the texts.</summary>
    /// <param name="bytes">The ROM from the first text on.</param>
    /// <param name="texts">Receives them, with whatever letters they have.</param>
    /// <returns>Bytes up to and with the 00 that ends them; null when a text or the header has no end.</returns>
    public static int? Read(ReadOnlySpan<byte> bytes, List<TitleText> texts)
    {
        var at = 0;
        while (at < bytes.Length && bytes[at] != TitleText.EndOfHeader)
        {
            var text = bytes[Math.Min(at + TitleText.Numbers, bytes.Length)..];
            var length = text.IndexOf(TitleText.EndOfText);
            if (length < 0 || text[..length].IndexOfAnyExceptInRange(TitleText.FirstLetter, (byte)0x7F) >= 0)
            {
                return null;
            }

            texts.Add(new TitleText((sbyte)bytes[at], (sbyte)bytes[at + 1], (sbyte)bytes[at + 2], (sbyte)bytes[at + 3], Encoding.ASCII.GetString(text[..length])));
            at += TitleText.Numbers + length + 1;
        }

        return at < bytes.Length ? at + 1 : null;
    }

    /// <summary>Whether all letters of a text can be drawn.</summary>
    public static bool CanBeDrawn(string text) => text.AsSpan().IndexOfAnyExceptInRange((char)TitleText.FirstLetter, (char)TitleText.LastLetter) < 0;

    /// <summary>Bytes that texts take, with the 00 that ends them.</summary>
    public static int LengthOf(List<TitleText> texts) => texts.Sum(static text => TitleText.Numbers + text.Text.Length + 1) + 1;

    /// <summary>Writes texts and the 00 that ends them.</summary>
    public static void Write(List<TitleText> texts, Span<byte> bytes)
    {
        var at = 0;
        foreach (var text in texts)
        {
            bytes[at] = (byte)text.Height;
            bytes[at + 1] = (byte)text.Width;
            bytes[at + 2] = (byte)text.Y;
            bytes[at + 3] = (byte)text.X;
            at += TitleText.Numbers;
            at += Encoding.ASCII.GetBytes(text.Text, bytes[at..]);
            bytes[at++] = TitleText.EndOfText;
        }

        bytes[at] = TitleText.EndOfHeader;
    }
}
