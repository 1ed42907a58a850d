using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>Cells that hold too little charge: weak ones chosen anew in each programming, read as one now and then.</summary>
internal static class WeakFaults
{
    public static byte[] Apply(byte[] cells, ImmutableArray<Fault> faults, Chance programming, Chance read) =>
        faults.Aggregate(cells, (e, fault) => Apply(e, fault, programming.About("weak"), read.About("weak")));

    private static byte[] Apply(byte[] e, Fault fault, Chance programming, Chance read)
    {
        var r = new byte[e.Length];
        for (var b = 0; b < r.Length; b++)
        {
            var weak = ~e[b] & Bits.Chosen(programming, b, fault.Share);
            r[b] = weak == 0 ? e[b] : (byte)(e[b] | (weak & Bits.Chosen(read, b, fault.ShowsOne)));
        }

        return r;
    }
}
