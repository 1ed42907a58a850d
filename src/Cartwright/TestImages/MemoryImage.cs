using System.Buffers.Binary;
using System.IO.Hashing;

namespace Cartwright.TestImages;

/// <summary>Chance bytes in blocks that end in their own CRC-32.</summary>
public static class MemoryImage
{
    /// <summary>Bytes of a block, its CRC-32 included.</summary>
    public const int BlockSize = 256;

    private const int DataLength = BlockSize - sizeof(uint);

    /// <summary>Makes the image.</summary>
    /// <param name="size">Size in bytes, a multiple of 256.</param>
    /// <param name="seed">Another number for each chip.</param>
    public static byte[] Make(int size, uint seed)
    {
        var image = ChanceBytes.Make(size, seed);
        for (var block = 0; block < size; block += BlockSize)
        {
            var own = image.AsSpan(block, BlockSize);
            BinaryPrimitives.WriteUInt32LittleEndian(own[DataLength..], Crc32.HashToUInt32(own[..DataLength]));
        }

        return image;
    }

    /// <summary>The image with every bit inverted.</summary>
    /// <param name="size">Size in bytes, a multiple of 256.</param>
    /// <param name="seed">Another number for each chip.</param>
    public static byte[] Inverse(int size, uint seed)
    {
        var image = Make(size, seed);
        foreach (ref var value in image.AsSpan())
        {
            value = (byte)~value;
        }

        return image;
    }

    /// <summary>Whether every block, or its inverse, goes with its CRC-32.</summary>
    /// <param name="image">The image.</param>
    public static bool IsWhole(ReadOnlySpan<byte> image)
    {
        Span<byte> inverse = stackalloc byte[BlockSize];
        var isWhole = image.Length % BlockSize == 0;
        for (var at = 0; isWhole && at < image.Length; at += BlockSize)
        {
            var block = image.Slice(at, BlockSize);
            for (var i = 0; i < BlockSize; i++)
            {
                inverse[i] = (byte)~block[i];
            }

            isWhole = HasItsCheck(block) || HasItsCheck(inverse);
        }

        return isWhole;
    }

    private static bool HasItsCheck(ReadOnlySpan<byte> block) => BinaryPrimitives.ReadUInt32LittleEndian(block[DataLength..]) == Crc32.HashToUInt32(block[..DataLength]);
}
