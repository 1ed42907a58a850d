using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>Several words of the file that landed on one word of the chip.</summary>
internal static class LandedFaults
{
    public static byte[] Apply(ChipShape shape, byte[] sent, ImmutableArray<Fault> faults) =>
        faults.Aggregate(sent, (e, fault) => fault.Kind == "chip-too-small" ? TooSmall(e, fault) : shape.ToBytes(DeadWhileWriting(shape, shape.ToWords(e), fault)));

    private static byte[] TooSmall(byte[] e, Fault fault)
    {
        var r = new byte[e.Length];
        for (var b = 0; b < r.Length; b++)
        {
            r[b] = fault.Holds switch
            {
                "first" => e[b % fault.Size],
                "last" => e[e.Length - fault.Size + (b % fault.Size)],
                _ => Mixed(e, b % fault.Size, fault.Size),
            };
        }

        return r;
    }

    private static byte Mixed(byte[] e, int b, int size)
    {
        var mixed = 0xFF;
        for (var from = b; from < e.Length; from += size)
            mixed &= e[from];

        return (byte)mixed;
    }

    private static int[] DeadWhileWriting(ChipShape shape, int[] e, Fault fault) =>
        fault.AddressLines.Aggregate(e, (words, line) => DeadWhileWriting(shape, words, line, fault.Reading));

    private static int[] DeadWhileWriting(ChipShape shape, int[] e, int line, string reading)
    {
        var r = new int[e.Length];
        for (var a = 0; a < r.Length; a++)
        {
            var both = e[a] & e[a ^ (1 << line)];
            var isHigh = ((a >> line) & 1) == 1;
            r[a] = reading == "dead" || isHigh == (reading == "high") ? both : shape.AllOnes;
        }

        return r;
    }
}
