using System.Numerics;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Lines that show what chance makes of them, so that no two reads are the same.</summary>
internal static class OpenLines
{
    private const int MostOpen = 3;
    private const int LongestRun = 16;
    private const int FewestChoices = 16;
    private const double Widest = 6;

    /// <summary>Data lines whose level has nothing to do with what was expected.</summary>
    public static IEnumerable<Fault> Data(ReadSet set)
    {
        var mask = (uint)set.Wrong;
        if (mask == 0 || BitOperations.PopCount(mask) > MostOpen)
        {
            return [];
        }

        var lines = Enumerable.Range(0, set.Expected.Shape.Width).Where(i => (mask >> i & 1) != 0).ToList();
        return lines.TrueForAll(i => IsByChance(set, i)) && !Shorted(set).Any()
            ? [Open(Fault.On(FaultKinds.DataOpen, LineFaults.Lines('D', mask)), lines.Min(i => Run(set, i)), lines.Average(i => Ones(set, i)))]
            : [];
    }

    /// <summary>Data lines that are always alike, right where they should be alike, and anything where they should not.</summary>
    public static IEnumerable<Fault> Shorted(ReadSet set)
    {
        var mask = set.Wrong;
        if (BitOperations.PopCount(mask) < 2)
        {
            yield break;
        }

        var (low, high) = (0, 0);
        foreach (var read in set.Reads)
        {
            for (var a = 0; a < read.Length; a++)
            {
                var (right, seen) = (set.Expected.Words[a] & mask, read[a] & mask);
                if ((seen != 0 && seen != mask) || ((right == 0 || right == mask) && seen != right))
                {
                    yield break;
                }

                (low, high) = right == 0 || right == mask ? (low, high) : seen == 0 ? (low + 1, high) : (low, high + 1);
            }
        }

        if (Math.Min(low, high) >= FewestChoices)
        {
            yield return Fault.On(FaultKinds.DataShorted, LineFaults.Lines('D', mask), Of("wins", "either"));
        }
    }

    /// <summary>Address lines of which every word is that of one level or the other.</summary>
    public static IEnumerable<Fault> Address(ReadSet set) =>
        from line in Enumerable.Range(0, set.Expected.AddressLines)
        let choices = Choices(set, line)
        where choices is { Low: >= FewestChoices, High: >= FewestChoices }
        select Open(Fault.On(FaultKinds.AddressOpen, [LineFaults.Line('A', line)]), choices.Value.Run, (double)choices.Value.High / (choices.Value.Low + choices.Value.High));

    private static Fault Open(Fault line, int run, double ones) => line with { Parameters = [Of("follows", "chance"), Of("run", run), Of("ones", Math.Round(ones, 2))] };

    private static (int Low, int High, int Run)? Choices(ReadSet set, int line)
    {
        var (low, high, run) = (0, 0, LongestRun);
        var words = set.Expected.Words;
        foreach (var read in set.Reads)
        {
            var (last, level) = (-1, 0);
            for (var a = 0; a < read.Length; a++)
            {
                var (other, own) = (a ^ (1 << line), words[a]);
                var shown = other < words.Length ? words[other] : own;
                if (shown == own && read[a] == own)
                {
                    continue;
                }

                if (read[a] != own && read[a] != shown)
                {
                    return null;
                }

                var now = read[a] == own ? a >> line & 1 : ~a >> line & 1;
                (low, high) = now == 0 ? (low + 1, high) : (low, high + 1);
                run = last >= 0 && now != level ? Math.Min(run, BitOperations.Log2((uint)(last ^ a))) : run;
                (last, level) = (a, now);
            }
        }

        return (low, high, run);
    }

    // A line of its own: it is one as often where one was expected as where zero was.
    private static bool IsByChance(ReadSet set, int line)
    {
        var (ones, seenAtOne, zeros, seenAtZero) = (0L, 0L, 0L, 0L);
        foreach (var read in set.Reads)
        {
            for (var a = 0; a < read.Length; a++)
            {
                var (right, seen) = (set.Expected.Words[a] >> line & 1, read[a] >> line & 1);
                (ones, seenAtOne) = right == 1 ? (ones + 1, seenAtOne + seen) : (ones, seenAtOne);
                (zeros, seenAtZero) = right == 0 ? (zeros + 1, seenAtZero + seen) : (zeros, seenAtZero);
            }
        }

        var run = 1 << Run(set, line);
        if (Math.Min(ones, zeros) < FewestChoices * run)
        {
            return false;
        }

        var (atOne, atZero, all) = ((double)seenAtOne / ones, (double)seenAtZero / zeros, (double)(seenAtOne + seenAtZero) / (ones + zeros));
        return Math.Abs(atOne - atZero) <= Widest * Math.Sqrt(all * (1 - all) * run * ((1.0 / ones) + (1.0 / zeros)));
    }

    private static double Ones(ReadSet set, int line)
    {
        var ones = 0L;
        foreach (var read in set.Reads)
        {
            foreach (var word in read)
            {
                ones += word >> line & 1;
            }
        }

        return (double)ones / set.Reads.Length / set.Expected.Count;
    }

    // The level stays for two to this power words in a row, and may change where a block of so many begins.
    private static int Run(ReadSet set, int line)
    {
        var run = LongestRun;
        foreach (var read in set.Reads)
        {
            for (var a = 1; a < read.Length && run > 0; a++)
            {
                run = ((read[a] ^ read[a - 1]) >> line & 1) != 0 ? Math.Min(run, BitOperations.TrailingZeroCount(a)) : run;
            }
        }

        return run;
    }
}
