using System.Globalization;
using System.Text;

namespace Cartwright.TestImages;

/// <summary>A tag at both ends of every block of 1 KiB, each with an address that no other has.</summary>
public static class SizeImage
{
    /// <summary>Bytes of the smallest block.</summary>
    public const int BlockSize = 1 << 10;

    /// <summary>Bytes of a tag.</summary>
    public const int TagLength = 16;

    /// <summary>Makes the image.</summary>
    /// <param name="size">Size in bytes, a multiple of 1 KiB.</param>
    public static byte[] Make(int size)
    {
        var image = new byte[size];
        image.AsSpan().Fill(0xFF);
        for (var block = 0; block < size; block += BlockSize)
        {
            Write(block, "FIRST", image.AsSpan(block, TagLength));
            Write(block + BlockSize - 1, "LAST", image.AsSpan(block + BlockSize - TagLength, TagLength));
        }

        return image;
    }

    private static void Write(int address, string end, Span<byte> target) =>
        _ = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"<{address:X7} {end,-6}>"), target);
}
