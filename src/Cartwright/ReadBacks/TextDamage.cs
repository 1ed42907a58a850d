using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>What becomes of a binary file that is treated as text on its way, cut or filled with erased bytes to the size it had.</summary>
internal static class TextDamage
{
    private const byte LineFeed = 0x0A;
    private const byte CarriageReturn = 0x0D;
    private const byte EndOfText = 0x1A;

    public static ImmutableArray<(string How, Func<byte[], byte[]> Damage)> Ways { get; } =
    [
        ("cr-inserted", CrInserted),
        ("cr-removed", CrRemoved),
        ("seven-bit", SevenBit),
        ("cut-at-1a", CutAt1A),
    ];

    private static byte[] CrInserted(byte[] file)
    {
        var text = Blank(file.Length);
        for (var (from, to) = (0, 0); to < text.Length; from++)
        {
            if (file[from] == LineFeed)
            {
                text[to++] = CarriageReturn;
            }

            if (to < text.Length)
            {
                text[to++] = file[from];
            }
        }

        return text;
    }

    private static byte[] CrRemoved(byte[] file)
    {
        var text = Blank(file.Length);
        var to = 0;
        for (var from = 0; from < file.Length; from++)
        {
            if (file[from] != CarriageReturn || from + 1 == file.Length || file[from + 1] != LineFeed)
            {
                text[to++] = file[from];
            }
        }

        return text;
    }

    private static byte[] SevenBit(byte[] file)
    {
        var text = new byte[file.Length];
        for (var b = 0; b < file.Length; b++)
        {
            text[b] = (byte)(file[b] & 0x7F);
        }

        return text;
    }

    private static byte[] CutAt1A(byte[] file)
    {
        var text = Blank(file.Length);
        var end = Array.IndexOf(file, EndOfText);
        file.AsSpan(0, end < 0 ? file.Length : end).CopyTo(text);
        return text;
    }

    private static byte[] Blank(int length)
    {
        var bytes = new byte[length];
        bytes.AsSpan().Fill(WordImage.Erased);
        return bytes;
    }
}
