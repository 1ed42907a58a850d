using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>What the cells hold instead of what landed on them.</summary>
internal static class CellFaults
{
    public static byte[] Apply(byte[] landed, ImmutableArray<Fault> faults, Chance chance) =>
        faults.Aggregate(landed, (e, fault) => Apply(e, fault, chance.About(fault.Kind)));

    private static byte[] Apply(byte[] e, Fault fault, Chance chance)
    {
        var r = (byte[])e.Clone();
        for (var b = 0; b < r.Length; b++)
        {
            r[b] = fault.Kind switch
            {
                "blank" => (byte)fault.Value,
                "not-erased" => (byte)(e[b] & fault.Image[b]),
                "cells-damaged" => (byte)(e[b] | Bits.Chosen(chance, b, fault.Share)),
                "sectors-unchanged" => fault.Sectors.Contains(b / fault.SectorSize) ? fault.Image[b] : e[b],
                _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "not of the cells"),
            };
        }

        return r;
    }
}
