using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.ReadBacks;

/// <summary>Counts over words, a vector at a time.</summary>
internal static class WordCompare
{
    // A lane of 16 bits counts at most this often before it is emptied.
    private const int LaneRoom = ushort.MaxValue;

    /// <summary>Words that differ.</summary>
    public static int CountDifferences(ReadOnlySpan<ushort> left, ReadOnlySpan<ushort> right)
    {
        var length = Math.Min(left.Length, right.Length);
        var a = MemoryMarshal.Cast<ushort, Vector<ushort>>(left[..length]);
        var b = MemoryMarshal.Cast<ushort, Vector<ushort>>(right[..length]);
        var equal = 0;
        for (var start = 0; start < a.Length; start += LaneRoom)
        {
            var lanes = Vector<ushort>.Zero;
            for (var i = start; i < Math.Min(a.Length, start + LaneRoom); i++)
            {
                lanes -= Vector.Equals(a[i], b[i]);
            }

            for (var lane = 0; lane < Vector<ushort>.Count; lane++)
            {
                equal += lanes[lane];
            }
        }

        for (var i = a.Length * Vector<ushort>.Count; i < length; i++)
        {
            equal += left[i] == right[i] ? 1 : 0;
        }

        return length - equal;
    }

    /// <summary>The bits that differ anywhere.</summary>
    public static ushort DifferentBits(ReadOnlySpan<ushort> left, ReadOnlySpan<ushort> right)
    {
        var bits = 0;
        for (var i = 0; i < left.Length; i++)
        {
            bits |= left[i] ^ right[i];
        }

        return (ushort)bits;
    }

    /// <summary>The bits that are set in every word, and those that are set in some.</summary>
    public static (ushort Always, ushort Ever) Bits(ReadOnlySpan<ushort> words)
    {
        var (always, ever) = ((int)ushort.MaxValue, 0);
        foreach (var word in words)
        {
            always &= word;
            ever |= word;
        }

        return ((ushort)always, (ushort)ever);
    }
}
