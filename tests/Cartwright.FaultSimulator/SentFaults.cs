using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>What never reached the chip, and so stayed erased.</summary>
internal static class SentFaults
{
    public static byte[] Apply(byte[] file, ImmutableArray<Fault> faults) => faults.Aggregate(file, Apply);

    private static byte[] Apply(byte[] e, Fault fault)
    {
        var r = (byte[])e.Clone();
        foreach (var (start, length) in fault.Kind == "stopped-early" ? [(fault.At, e.Length - fault.At)] : fault.Blocks)
            r.AsSpan(start, length).Fill(0xFF);

        return r;
    }
}
