using System.Globalization;
using System.IO.Hashing;
using System.Text;

namespace Cartwright.TestImages;

/// <summary>Lines of text that say their own address: <c>U1 003:0010 1A2B</c>.</summary>
public static class RulerImage
{
    /// <summary>Characters of a line.</summary>
    public const int LineLength = 16;

    private const int CheckedLength = 11;

    /// <summary>Makes the image.</summary>
    /// <param name="site">The site's name; its last two characters are shown.</param>
    /// <param name="size">Size in bytes, a multiple of 16, at most 256 MiB.</param>
    public static byte[] Make(string site, int size)
    {
        var image = new byte[size];
        var chip = site.Length > 2 ? site[^2..] : site.PadRight(2);
        for (var at = 0; at < size; at += LineLength)
        {
            WriteLine(chip, at, image.AsSpan(at, LineLength));
        }

        return image;
    }

    /// <summary>The check of a line: the low 16 bits of the CRC-32 of its first eleven characters.</summary>
    /// <param name="line">The line.</param>
    public static ushort Check(ReadOnlySpan<byte> line) => (ushort)Crc32.HashToUInt32(line[..CheckedLength]);

    private static void WriteLine(string chip, int at, Span<byte> line)
    {
        Span<char> text = stackalloc char[LineLength];
        _ = text.TryWrite(CultureInfo.InvariantCulture, $"{chip} {at >> 16:X3}:{at & 0xFFFF:X4} ", out _);
        _ = Encoding.ASCII.GetBytes(text[..(CheckedLength + 1)], line);
        _ = text.TryWrite(CultureInfo.InvariantCulture, $"{Check(line):X4}", out _);
        _ = Encoding.ASCII.GetBytes(text[..4], line[(CheckedLength + 1)..]);
    }
}
