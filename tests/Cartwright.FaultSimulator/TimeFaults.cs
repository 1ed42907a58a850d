using System.Collections.Immutable;
using System.Numerics;

namespace Cartwright.FaultSimulator;

/// <summary>A word that is read too early, or while too many lines switch, still shows something of what was before.</summary>
internal static class TimeFaults
{
    public static int[] Apply(ChipShape shape, int[] words, ImmutableArray<Fault> faults, Chance read) =>
        faults.Aggregate(words, (e, fault) => Apply(shape, e, fault, read.About(fault.Kind)));

    private static int[] Apply(ChipShape shape, int[] e, Fault fault, Chance read)
    {
        var r = new int[e.Length];
        for (var a = 0; a < r.Length; a++)
        {
            var before = a == 0 ? e.Length - 1 : a - 1;
            r[a] = fault.Kind == "bounce"
                ? Bounced(shape, e[a], Switching(a, before, e), a, fault, read)
                : Early(shape, e[a], e[before], a, fault, read);
        }

        return r;
    }

    private static int Early(ChipShape shape, int word, int before, int a, Fault fault, Chance read)
    {
        var lines = fault.DataLines;
        var slow = lines.Length == 0 ? shape.AllOnes : lines.Sum(static line => 1 << line);
        return word ^ ((word ^ before) & slow & Bits.Chosen(read, a, fault.Share, shape.Width));
    }

    private static int Switching(int a, int before, int[] e) =>
        BitOperations.PopCount((uint)(a ^ before)) + BitOperations.PopCount((uint)(e[a] ^ e[before]));

    private static int Bounced(ChipShape shape, int word, int switching, int a, Fault fault, Chance read)
    {
        var hit = Bits.Chosen(read, a, fault.Rate * Math.Max(0, switching - fault.Threshold), shape.Width);
        return fault.ReadsAs == 1 ? word | hit : word & ~hit;
    }
}
