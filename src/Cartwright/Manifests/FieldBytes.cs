using System.Text;

namespace Cartwright.Manifests;

/// <summary>Writes the fields that a manifest describes.</summary>
internal static class FieldBytes
{
    /// <summary>A text, padded behind; null when it is too long or not printable ASCII.</summary>
    public static byte[]? Text(string text, int width, byte pad)
    {
        if (text.Length > width || text.Any(static letter => letter is < ' ' or > '~'))
        {
            return null;
        }

        var bytes = new byte[width];
        bytes.AsSpan().Fill(pad);
        Encoding.ASCII.GetBytes(text, bytes);
        return bytes;
    }

    /// <summary>A number of 0 or more; null when it needs more bytes.</summary>
    public static byte[]? Number(long number, int width, bool lowByteFirst)
    {
        var bytes = new byte[width];
        for (var i = 0; i < width; i++, number >>= 8)
        {
            bytes[lowByteFirst ? i : width - 1 - i] = (byte)number;
        }

        return number == 0 ? bytes : null;
    }
}
