using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Several reads of one chip as words, and the words that were expected.</summary>
/// <param name="Expected">The image.</param>
/// <param name="Reads">The words of each read.</param>
/// <param name="Programmings">The programming each read came after.</param>
internal sealed record ReadSet(WordImage Expected, ImmutableArray<ushort[]> Reads, ImmutableArray<int> Programmings)
{
    /// <summary>The bits that are wrong in some read.</summary>
    public ushort Wrong { get; } = (ushort)Reads.Aggregate(0, (bits, read) => bits | Union(Expected.Words, read));

    /// <summary>The bits that are wrong in one read, word by word.</summary>
    /// <param name="read">The read.</param>
    /// <param name="right">What they should be.</param>
    public static ushort[] Differences(ushort[] read, ushort[] right)
    {
        var wrong = new ushort[read.Length];
        for (var a = 0; a < wrong.Length; a++)
        {
            wrong[a] = (ushort)(read[a] ^ right[a]);
        }

        return wrong;
    }

    private static int Union(ushort[] expected, ushort[] read)
    {
        var bits = 0;
        for (var a = 0; a < read.Length; a++)
        {
            bits |= read[a] ^ expected[a];
        }

        return bits;
    }
}
