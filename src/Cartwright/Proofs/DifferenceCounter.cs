using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.InteropServices;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>Counts wrong bits line by line, over reads of one length.</summary>
/// <param name="expected">The bytes that should be read: whole words.</param>
/// <param name="shape">Width of the chip and order of the bytes of a word.</param>
internal sealed class DifferenceCounter(ReadOnlyMemory<byte> expected, WordShape shape)
{
    private readonly byte[] _wrong = new byte[expected.Length];
    private readonly int[] _high = new int[shape.Width];
    private readonly int[] _low = new int[shape.Width];

    /// <summary>The first byte that is wrong in any read so far; -1 where none is.</summary>
    public int First { get; private set; } = -1;

    /// <summary>What the word there reads.</summary>
    public int FirstRead { get; private set; }

    public ImmutableArray<LineDifference> Lines => [.. Enumerable.Range(0, shape.Width).Select(line => new LineDifference(line, _high[line], _low[line]))];

    /// <summary>Adds a read.</summary>
    public void Add(ReadOnlySpan<byte> read)
    {
        var image = expected.Span;
        for (var b = image.CommonPrefixLength(read); b < image.Length; b += 1 + image[(b + 1)..].CommonPrefixLength(read[(b + 1)..]))
        {
            _wrong[b] |= (byte)(image[b] ^ read[b]);
            if (First < 0 || b < First)
            {
                (First, FirstRead) = (b, Word(read, b));
            }

            var lowest = shape.Width == 16 && int.IsEvenInteger(b) == shape.HighFirst ? 8 : 0;
            for (var bits = (uint)(image[b] ^ read[b]); bits != 0; bits &= bits - 1)
            {
                var line = BitOperations.TrailingZeroCount(bits);
                ((read[b] >> line & 1) != 0 ? _high : _low)[lowest + line]++;
            }
        }
    }

    /// <summary>Words of a stretch that are wrong in any read.</summary>
    public int Wrong(int start, int end)
    {
        var stretch = _wrong.AsSpan(Math.Min(start, _wrong.Length)..Math.Min(end, _wrong.Length));
        return shape.Width == 8 ? stretch.Length - stretch.Count((byte)0)
            : MemoryMarshal.Cast<byte, ushort>(stretch) is var words ? words.Length - words.Count((ushort)0) : 0;
    }

    /// <summary>Words whose byte of D0 to D7, or of D8 to D15, is wrong in any read.</summary>
    public int WrongBytes(bool high)
    {
        var count = 0;
        for (var b = shape.HighFirst == high ? 0 : 1; b < _wrong.Length; b += 2)
        {
            count += _wrong[b] != 0 ? 1 : 0;
        }

        return count;
    }

    /// <summary>The word that a byte is part of.</summary>
    public int Word(ReadOnlySpan<byte> bytes, int b) => WordImage.ToWords(bytes.Slice(b - (b % shape.Bytes), shape.Bytes), shape)[0];
}
