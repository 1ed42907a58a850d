using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Cartwright.ReadBacks;

/// <summary>Several reads of one chip: what they agree on, and how far they do not.</summary>
internal static class Readings
{
    /// <summary>The bits that most reads show; of an even number of reads a tie goes to the first read.</summary>
    public static (ushort[] Words, int Ties) Majority(ImmutableArray<ushort[]> reads)
    {
        var words = (ushort[])reads[0].Clone();
        var ties = 0;
        if (reads.Length < 2)
        {
            return (words, ties);
        }

        for (var a = 0; a < words.Length; a++)
        {
            if (Differs(reads, a))
            {
                ties += Vote(reads, a, out words[a]) ? 1 : 0;
            }
        }

        return (words, ties);
    }

    private static bool Differs(ImmutableArray<ushort[]> reads, int a)
    {
        for (var r = 1; r < reads.Length; r++)
        {
            if (reads[r][a] != reads[0][a])
            {
                return true;
            }
        }

        return false;
    }

    private static bool Vote(ImmutableArray<ushort[]> reads, int a, out ushort word)
    {
        var (bits, tie) = (0, false);
        for (var i = 0; i < 16; i++)
        {
            var ones = 0;
            foreach (var read in reads)
            {
                ones += read[a] >> i & 1;
            }

            tie |= 2 * ones == reads.Length;
            bits |= 2 * ones > reads.Length || (2 * ones == reads.Length && (reads[0][a] >> i & 1) != 0) ? 1 << i : 0;
        }

        word = (ushort)bits;
        return tie;
    }

    /// <summary>Share of bits that differ.</summary>
    public static double Difference(ReadOnlySpan<byte> left, ReadOnlySpan<byte> right)
    {
        var length = Math.Min(left.Length, right.Length);
        var a = MemoryMarshal.Cast<byte, ulong>(left[..length]);
        var b = MemoryMarshal.Cast<byte, ulong>(right[..length]);
        var bits = 0L;
        for (var i = 0; i < a.Length; i++)
        {
            bits += BitOperations.PopCount(a[i] ^ b[i]);
        }

        for (var i = a.Length * sizeof(ulong); i < length; i++)
        {
            bits += BitOperations.PopCount((uint)(left[i] ^ right[i]));
        }

        return length == 0 ? 0 : bits / (8.0 * length);
    }

    public static ReadStatistics Statistics(ProofRequest request, string rule, int ties)
    {
        var (within, between) = (new List<double>(), new List<double>());
        for (var i = 0; i < request.Reads.Length; i++)
        {
            for (var k = i + 1; k < request.Reads.Length; k++)
            {
                (request.Reads[i].Insertion == request.Reads[k].Insertion ? within : between).Add(Difference(request.Reads[i].Bytes, request.Reads[k].Bytes));
            }
        }

        var all = within.Concat(between).DefaultIfEmpty().Average();
        return new ReadStatistics(
            request.Reads.Length,
            request.Reads.Length == 1 ? "single read" : rule,
            ties,
            Varying(request),
            within.Count == 0 ? null : within.Average(),
            between.Count == 0 ? null : between.Average(),
            ErrorRate(all));
    }

    /// <summary>Bit errors of one read, from the share of bits that differ between two.</summary>
    public static double ErrorRate(double difference) => difference >= 0.5 ? 0.5 : (1 - Math.Sqrt(1 - (2 * difference))) / 2;

    private static int Varying(ProofRequest request)
    {
        var varying = 0;
        var words = request.Reads.Select(read => WordImage.ToWords(read.Bytes, request.Shape)).ToImmutableArray();
        for (var a = 0; a < words.Min(static read => read.Length) && words.Length > 1; a++)
        {
            varying += Differs(words, a) ? 1 : 0;
        }

        return varying;
    }
}
