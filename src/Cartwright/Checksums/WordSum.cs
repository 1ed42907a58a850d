using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.Checksums;

/// <summary>The sum of 16-bit words.</summary>
public static class WordSum
{
    /// <summary>The sum of big-endian 16-bit words modulo 2^16, as a Mega Drive header stores it (ROM header reference).</summary>
    /// <param name="bytes">
    /// The words. A single byte left over at the end is the high byte of a word whose low byte is 00; where another pad is
    /// wanted, pad first.
    /// </param>
    public static ushort BigEndian16(ReadOnlySpan<byte> bytes)
    {
        var vectors = MemoryMarshal.Cast<byte, Vector<ushort>>(bytes);
        var tail = BigEndian16Scalar(bytes[(vectors.Length * Vector<byte>.Count)..]);
        return (ushort)(tail + (BitConverter.IsLittleEndian ? SumSwapped(vectors) : Sum(vectors)));
    }

    internal static ushort BigEndian16Scalar(ReadOnlySpan<byte> bytes)
    {
        var sum = 0U;
        for (; bytes.Length >= sizeof(ushort); bytes = bytes[sizeof(ushort)..])
            sum += BinaryPrimitives.ReadUInt16BigEndian(bytes);

        return (ushort)(sum + (bytes.IsEmpty ? 0U : (uint)bytes[0] << 8));
    }

    // A word w read in the wrong order stands for (w << 8) + (w >> 8) modulo 2^16, and the shift to the left can wait until
    // all words are added.
    private static ushort SumSwapped(ReadOnlySpan<Vector<ushort>> vectors)
    {
        var whole = Vector<ushort>.Zero;
        var low = Vector<ushort>.Zero;
        foreach (var words in vectors)
        {
            whole += words;
            low += words >>> 8;
        }

        return Vector.Sum((whole << 8) + low);
    }

    private static ushort Sum(ReadOnlySpan<Vector<ushort>> vectors)
    {
        var sum = Vector<ushort>.Zero;
        foreach (var words in vectors)
            sum += words;

        return Vector.Sum(sum);
    }
}
