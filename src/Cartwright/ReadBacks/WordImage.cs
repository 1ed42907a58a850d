using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.ReadBacks;

/// <summary>An image as bytes of a file and as words of a chip.</summary>
internal sealed class WordImage
{
    /// <summary>What a blank cell of flash and EPROM reads.</summary>
    public const byte Erased = 0xFF;

    private readonly byte[] _bytes;
    private readonly ushort[] _words;

    public WordImage(byte[] bytes, WordShape shape)
    {
        _bytes = bytes;
        Shape = shape;
        _words = ToWords(bytes, shape);
    }

    public WordShape Shape { get; }

    public byte[] Bytes => _bytes;

    public ushort[] Words => _words;

    public int Count => _words.Length;

    /// <summary>Address lines that its words need.</summary>
    public int AddressLines => Count < 2 ? 0 : BitOperations.Log2((uint)Count - 1) + 1;

    public WordImage With(byte[] bytes) => new(bytes, Shape);

    public static ushort[] ToWords(ReadOnlySpan<byte> bytes, WordShape shape)
    {
        var words = new ushort[bytes.Length / shape.Bytes];
        if (shape.Width == 8)
        {
            for (var i = 0; i < words.Length; i++)
            {
                words[i] = bytes[i];
            }
        }
        else
        {
            MemoryMarshal.Cast<byte, ushort>(bytes[..(words.Length * 2)]).CopyTo(words);
            if (shape.HighFirst == BitConverter.IsLittleEndian)
            {
                BinaryPrimitives.ReverseEndianness(words, words);
            }
        }

        return words;
    }

    public static byte[] ToBytes(ReadOnlySpan<ushort> words, WordShape shape)
    {
        var bytes = new byte[words.Length * shape.Bytes];
        if (shape.Width == 8)
        {
            for (var i = 0; i < words.Length; i++)
            {
                bytes[i] = (byte)words[i];
            }
        }
        else
        {
            var pairs = MemoryMarshal.Cast<byte, ushort>(bytes.AsSpan());
            words.CopyTo(pairs);
            if (shape.HighFirst == BitConverter.IsLittleEndian)
            {
                BinaryPrimitives.ReverseEndianness(pairs, pairs);
            }
        }

        return bytes;
    }
}
