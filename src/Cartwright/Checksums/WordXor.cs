using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.Checksums;

/// <summary>The exclusive or of 16-bit words: what some toolchains store where a word sum is documented (seen in images).</summary>
public static class WordXor
{
    /// <summary>The exclusive or of big-endian 16-bit words.</summary>
    /// <param name="bytes">
    /// The words. A single byte left over at the end is the high byte of a word whose low byte is 00.
    /// </param>
    public static ushort BigEndian16(ReadOnlySpan<byte> bytes)
    {
        var vectors = MemoryMarshal.Cast<byte, Vector<ushort>>(bytes);
        var lanes = Vector<ushort>.Zero;
        foreach (var words in vectors)
            lanes ^= words;

        Span<byte> last = stackalloc byte[Vector<byte>.Count];
        Vector.AsVectorByte(lanes).CopyTo(last);
        return (ushort)(BigEndian16Scalar(last) ^ BigEndian16Scalar(bytes[(vectors.Length * Vector<byte>.Count)..]));
    }

    internal static ushort BigEndian16Scalar(ReadOnlySpan<byte> bytes)
    {
        var result = 0;
        for (; bytes.Length >= sizeof(ushort); bytes = bytes[sizeof(ushort)..])
            result ^= BinaryPrimitives.ReadUInt16BigEndian(bytes);

        return (ushort)(result ^ (bytes.IsEmpty ? 0 : bytes[0] << 8));
    }
}
