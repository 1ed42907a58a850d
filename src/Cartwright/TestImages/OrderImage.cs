using Cartwright.Headers;

namespace Cartwright.TestImages;

/// <summary>The words 0x0123, 0x4567, 0x89AB, 0xCDEF over and over, as the bus carries them.</summary>
public static class OrderImage
{
    private static ReadOnlySpan<byte> HighFirst => [0x01, 0x23, 0x45, 0x67, 0x89, 0xAB, 0xCD, 0xEF];

    /// <summary>Makes the image.</summary>
    /// <param name="size">Size in bytes.</param>
    /// <param name="busWidth">Data lines of the bus; on 8 the words stand with their high byte first.</param>
    /// <param name="order">Which byte of a 16-bit bus carries the even address.</param>
    public static byte[] Make(int size, int busWidth, ByteOrder order)
    {
        var image = new byte[size];
        var swap = busWidth == 16 && order == ByteOrder.LittleEndian ? 1 : 0;
        for (var at = 0; at < size; at++)
        {
            image[at] = HighFirst[(at ^ swap) & 7];
        }

        return image;
    }
}
