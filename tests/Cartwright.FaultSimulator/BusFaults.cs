using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>Nobody drives the bus, or two do.</summary>
internal static class BusFaults
{
    public static int[] Apply(ChipShape shape, int[] words, ImmutableArray<Fault> faults, Chance read) =>
        faults.Aggregate(words, (e, fault) => Apply(shape, e, fault, read.About("bus")));

    private static int[] Apply(ChipShape shape, int[] e, Fault fault, Chance read)
    {
        var r = (int[])e.Clone();
        var everywhere = fault.Kind == "bus-not-driven";
        var start = everywhere ? 0 : fault.Start / shape.BytesPerWord;
        var end = everywhere ? e.Length : start + (fault.Length / shape.BytesPerWord);
        var other = fault.Image.IsEmpty ? [] : shape.ToWords([.. fault.Image]);
        for (var a = start; a < end; a++)
        {
            r[a] = fault.Kind == "two-chips-enabled"
                ? (fault.Wins == "low" ? e[a] & other[a] : e[a] | other[a])
                : Undriven(shape, a, fault, read);
        }

        return r;
    }

    private static int Undriven(ChipShape shape, int a, Fault fault, Chance read) => fault.Shows switch
    {
        "zeros" => 0,
        "address" => (a >> fault.Shift) & shape.AllOnes,
        "chance" => Bits.Chosen(read, a, 0.5, shape.Width),
        _ => shape.AllOnes,
    };
}
