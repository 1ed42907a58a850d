using System.Numerics;
using System.Runtime.Intrinsics;

namespace Cartwright.ReadBacks;

/// <summary>
/// How often each data line is one, altogether and where an address line is one. A permutation of lines moves these numbers and changes none,
/// so that lines are recognised by them.
/// </summary>
internal sealed class LineCounts
{
    private const int Block = 64;
    private const int BlockLines = 6;

    // Which of 64 successive words have the address line at one.
    private static readonly ulong[] Masks =
        [0xAAAAAAAAAAAAAAAA, 0xCCCCCCCCCCCCCCCC, 0xF0F0F0F0F0F0F0F0, 0xFF00FF00FF00FF00, 0xFFFF0000FFFF0000, 0xFFFFFFFF00000000];

    private LineCounts(int width, int lines, int words)
    {
        Words = words;
        Ones = new long[width];
        Joint = [.. Enumerable.Range(0, width).Select(_ => new long[lines])];
    }

    /// <summary>Number of words counted.</summary>
    public int Words { get; }

    /// <summary>For each data line, in how many words it is one.</summary>
    public long[] Ones { get; }

    /// <summary>For each data line and address line, in how many words both are one.</summary>
    public long[][] Joint { get; }

    /// <summary>Counts.</summary>
    /// <param name="words">Two to the power of <paramref name="lines"/> words.</param>
    /// <param name="width">Data lines.</param>
    /// <param name="lines">Address lines.</param>
    public static LineCounts Of(ReadOnlySpan<ushort> words, int width, int lines)
    {
        var counts = new LineCounts(width, lines, words.Length);
        Span<ulong> planes = stackalloc ulong[width];
        var padded = new ushort[Block];
        for (var start = 0; start < words.Length; start += Block)
        {
            var block = words[start..Math.Min(words.Length, start + Block)];
            if (block.Length < Block)
            {
                Array.Clear(padded);
                block.CopyTo(padded);
                block = padded;
            }

            Transpose(block, planes);
            counts.Add(planes, start);
        }

        return counts;
    }

    private void Add(ReadOnlySpan<ulong> planes, int start)
    {
        for (var i = 0; i < planes.Length; i++)
        {
            var joint = Joint[i];
            var ones = BitOperations.PopCount(planes[i]);
            Ones[i] += ones;
            for (var k = 0; k < Math.Min(BlockLines, joint.Length); k++)
            {
                joint[k] += BitOperations.PopCount(planes[i] & Masks[k]);
            }

            for (var high = (uint)start >> BlockLines; high != 0; high &= high - 1)
            {
                joint[BlockLines + BitOperations.TrailingZeroCount(high)] += ones;
            }
        }
    }

    // Sixty-four words become one number for each data line, word k at bit k.
    private static void Transpose(ReadOnlySpan<ushort> words, Span<ulong> planes)
    {
        planes.Clear();
        for (var part = 0; part < Block; part += Vector128<byte>.Count)
        {
            var first = Vector128.Create(words[part..]);
            var second = Vector128.Create(words[(part + Vector128<ushort>.Count)..]);
            Gather(Vector128.Narrow(first & Vector128.Create((ushort)0xFF), second & Vector128.Create((ushort)0xFF)), part, planes[..8]);
            if (planes.Length > 8)
            {
                Gather(Vector128.Narrow(first >>> 8, second >>> 8), part, planes[8..]);
            }
        }
    }

    private static void Gather(Vector128<byte> bytes, int part, Span<ulong> planes)
    {
        for (var i = planes.Length - 1; i >= 0; i--)
        {
            planes[i] |= (ulong)bytes.ExtractMostSignificantBits() << part;
            bytes += bytes;
        }
    }
}
