using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>f: an address on its way from the reader to the chip.</summary>
internal sealed class AddressPath(ImmutableArray<Fault> faults, Chance chance)
{
    private readonly ImmutableArray<(Fault Fault, int[] Lines)> steps = [.. faults.Select(static fault => (fault, fault.AddressLines))];

    public int ToChip(int reader)
    {
        var a = reader;
        foreach (var (fault, lines) in steps)
            a = Step(a, reader, fault, lines);

        return a;
    }

    private int Step(int a, int reader, Fault fault, int[] lines) => fault.Kind switch
    {
        "address-stuck-low" => Each(a, lines, static (_, _) => 0),
        "address-stuck-high" => Each(a, lines, static (_, _) => 1),
        "address-open" => Each(a, lines, (before, line) => Open(before, line, reader, fault)),
        "address-shorted" => Shorted(a, lines, fault.Wins),
        "address-swapped" => Bits.With(Bits.With(a, lines[0], Bits.Of(a, lines[1])), lines[1], Bits.Of(a, lines[0])),
        "address-permuted" => Permuted(a, fault.Map),
        "address-inverted" => Each(a, lines, static (before, line) => 1 - Bits.Of(before, line)),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "not of the address lines"),
    };

    private static int Each(int a, int[] lines, Func<int, int, int> value)
    {
        var result = a;
        foreach (var line in lines)
            result = Bits.With(result, line, value(a, line));

        return result;
    }

    private int Open(int a, int line, int reader, Fault fault) => fault.Follows switch
    {
        "low" => 0,
        "high" => 1,
        "chance" => chance.About('A').About(line).Happens(reader >> fault.Run, fault.Ones) ? 1 : 0,
        var other => Bits.Of(a, LineNumber.Of(other)),
    };

    private static int Shorted(int a, int[] lines, string wins)
    {
        var ones = lines.Count(line => Bits.Of(a, line) == 1);
        var level = wins == "low" ? (ones == lines.Length ? 1 : 0) : (ones > 0 ? 1 : 0);
        return Each(a, lines, (_, _) => level);
    }

    private static int Permuted(int a, ImmutableArray<int> map)
    {
        var chip = 0;
        for (var k = 0; k < map.Length; k++)
            chip |= Bits.Of(a, k) << map[k];

        return chip;
    }
}
