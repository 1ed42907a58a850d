using System.Numerics;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Bits that go wrong because lines switch: late ones, and ones disturbed by many that switch together.</summary>
internal static class HastyReads
{
    private const int FewestErrors = 16;
    private const int MostSwitching = 64;
    private const double ClearlyMoreLikely = 20;
    private const double Widest = 5.5;
    private const int Few = 4;
    private const int Expected = 16;

    /// <summary>Only bits that had to change are wrong.</summary>
    public static IEnumerable<Fault> Late(ReadSet set)
    {
        var (shape, words) = (set.Expected.Shape, set.Expected.Words);
        var (changes, errors) = (new long[shape.Width], new long[shape.Width]);
        foreach (var read in set.Reads)
        {
            var before = words[^1];
            for (var a = 0; a < read.Length; a++)
            {
                var (changed, wrong) = (words[a] ^ before, read[a] ^ words[a]);
                if ((wrong & ~changed) != 0)
                {
                    return [];
                }

                Count(changes, changed);
                Count(errors, wrong);
                before = words[a];
            }
        }

        var late = Enumerable.Range(0, shape.Width).Where(i => errors[i] > 0).ToList();
        var (hits, room) = (late.Sum(i => errors[i]), late.Sum(i => changes[i]));
        var ofAll = (double)changes.Sum() / words.Length / set.Reads.Length / shape.Width;
        if (hits < FewestErrors || -hits * Math.Log(ofAll) < ClearlyMoreLikely || !late.TrueForAll(i => IsNear(errors[i], changes[i] * (double)hits / room)))
        {
            return [];
        }

        var share = (double)hits / room;
        var isEvery = Enumerable.Range(0, shape.Width).All(i => errors[i] > 0 || changes[i] * share < Expected);
        var mask = late.Aggregate(0u, static (bits, i) => bits | (1u << i));
        return [Fault.On(FaultKinds.ReadTooEarly, isEvery ? [] : LineFaults.Lines('D', mask), Of("share", share))];
    }

    /// <summary>Only zeros, or only ones, are wrong, and the more the more lines switch.</summary>
    public static IEnumerable<Fault> Bounce(ReadSet set)
    {
        foreach (var readsAs in (int[])[1, 0])
        {
            if (Switching(set, readsAs) is { } counts && Fit(counts.Room, counts.Errors) is { } fit)
            {
                yield return Fault.Of(FaultKinds.Bounce, Of("readsAs", readsAs), Of("threshold", fit.Threshold), Of("rate", fit.Rate));
            }
        }
    }

    // By the number of lines that switch: bits that could go wrong, and bits that did.
    private static (long[] Room, long[] Errors)? Switching(ReadSet set, int readsAs)
    {
        var (room, errors) = (new long[MostSwitching], new long[MostSwitching]);
        var (words, last) = (set.Expected.Words, set.Expected.Count - 1);
        for (var a = 0; a < words.Length; a++)
        {
            var before = a == 0 ? last : a - 1;
            var switching = BitOperations.PopCount((uint)(a ^ before)) + BitOperations.PopCount((uint)(words[a] ^ words[before]));
            var other = readsAs == 1 ? ~words[a] & set.Expected.Shape.Ones : words[a];
            room[switching] += BitOperations.PopCount((uint)other) * set.Reads.Length;
            foreach (var read in set.Reads)
            {
                var wrong = read[a] ^ words[a];
                if ((wrong & ~other) != 0)
                {
                    return null;
                }

                errors[switching] += BitOperations.PopCount((uint)wrong);
            }
        }

        return (room, errors);
    }

    private static (int Threshold, double Rate)? Fit(long[] room, long[] errors)
    {
        var all = errors.Sum();
        var least = Array.FindIndex(errors, static count => count > 0);
        if (all < FewestErrors)
        {
            return null;
        }

        var best = Enumerable.Range(0, least).Select(threshold => (Threshold: threshold, Rate: Rate(room, all, threshold)))
            .Select(row => (row.Threshold, row.Rate, Likelihood: Likelihood(room, errors, t => row.Rate * Math.Max(0, t - row.Threshold))))
            .DefaultIfEmpty((Threshold: 0, Rate: 0.0, Likelihood: double.NegativeInfinity))
            .MaxBy(static row => row.Likelihood);
        var even = (double)all / room.Sum();
        return best.Likelihood - Likelihood(room, errors, _ => even) >= ClearlyMoreLikely
            && Enumerable.Range(0, room.Length).All(t => IsNear(errors[t], room[t] * best.Rate * Math.Max(0, t - best.Threshold)))
            ? (best.Threshold, best.Rate)
            : null;
    }

    private static double Rate(long[] room, long errors, int threshold)
    {
        var weight = 0.0;
        for (var t = threshold + 1; t < room.Length; t++)
        {
            weight += (double)room[t] * (t - threshold);
        }

        return weight == 0 ? 0 : errors / weight;
    }

    private static double Likelihood(long[] room, long[] errors, Func<int, double> rate)
    {
        var likelihood = 0.0;
        for (var t = 0; t < room.Length; t++)
        {
            likelihood += (errors[t] == 0 ? 0 : errors[t] * Math.Log(rate(t))) - (room[t] * rate(t));
        }

        return likelihood;
    }

    private static bool IsNear(long errors, double mean) => Math.Abs(errors - mean) <= (Widest * Math.Sqrt(mean)) + Few;

    private static void Count(long[] counts, int bits)
    {
        for (var rest = (uint)bits; rest != 0; rest &= rest - 1)
        {
            counts[BitOperations.TrailingZeroCount(rest)]++;
        }
    }
}
