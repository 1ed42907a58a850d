using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>A chip that answers with something else than its cells.</summary>
internal static class ChipFaults
{
    public static byte[] Apply(ChipShape shape, byte[] cells, ImmutableArray<Fault> faults, Reading reading) =>
        faults.Aggregate(cells, (e, fault) => shape.ToBytes(Apply(shape.ToWords(e), fault, reading)));

    private static int[] Apply(int[] cells, Fault fault, Reading reading)
    {
        var r = new int[cells.Length];
        for (var a = 0; a < r.Length; a++)
            r[a] = fault.Mode == "busy" ? Busy(cells[a], a, reading) : fault.Table[a % fault.Table.Length];

        return r;
    }

    private static int Busy(int cell, int a, Reading reading) => (~cell & 0x80) | (((a + reading.Number) & 1) << 6);
}
