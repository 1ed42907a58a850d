using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>Bits that flip by chance, in each read others.</summary>
internal static class NoiseFaults
{
    public static byte[] Apply(byte[] read, ImmutableArray<Fault> faults, Chance chance) =>
        faults.Aggregate(read, (e, fault) => Apply(e, fault, chance.About("noise")));

    private static byte[] Apply(byte[] e, Fault fault, Chance chance)
    {
        var r = new byte[e.Length];
        for (var b = 0; b < r.Length; b++)
            r[b] = (byte)(e[b] ^ Bits.Chosen(chance, b, fault.Rate));

        return r;
    }
}
