using System.Buffers.Binary;
using Cartwright.Ordering;

namespace Cartwright.TestImages;

/// <summary>Bytes that look like chance and are the same every time.</summary>
internal static class ChanceBytes
{
    /// <summary>Makes them.</summary>
    /// <param name="size">How many, a multiple of 4.</param>
    /// <param name="seed">Other bytes for another number.</param>
    public static byte[] Make(int size, uint seed)
    {
        var bytes = new byte[size];
        Write(bytes, 0, seed);
        return bytes;
    }

    /// <summary>Writes those that belong to a place.</summary>
    /// <param name="target">Where they go, a multiple of 4 bytes.</param>
    /// <param name="offset">The place, a multiple of 4.</param>
    /// <param name="seed">Other bytes for another number.</param>
    public static void Write(Span<byte> target, int offset, uint seed)
    {
        for (var i = 0; i < target.Length; i += sizeof(uint))
        {
            BinaryPrimitives.WriteUInt32LittleEndian(target[i..], Mixing.Of((uint)(offset + i), seed));
        }
    }
}
