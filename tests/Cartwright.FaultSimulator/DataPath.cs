using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>g: a word on its way from the chip to the reader; and h, its way back while writing through the same board.</summary>
internal sealed class DataPath(ChipShape shape, ImmutableArray<Fault> faults, Chance chance)
{
    private readonly ImmutableArray<(Fault Fault, int[] Lines)> steps = [.. faults.Select(static fault => (fault, fault.DataLines))];

    public int ToReader(int word, int reader)
    {
        foreach (var (fault, lines) in steps)
        {
            word = fault.Kind switch
            {
                "data-open" => lines.Aggregate(word, (result, line) => Bits.With(result, line, Open(word, line, reader, fault))),
                "data-permuted" => Mapped(word, bus => fault.Map[bus]),
                _ => BothWays(word, reader, fault, lines),
            };
        }

        return word;
    }

    /// <summary>The same faults met from the other end: a permutation is undone, an open line programs nothing.</summary>
    public int ToChip(int word, int reader)
    {
        for (var i = steps.Length - 1; i >= 0; i--)
        {
            var (fault, lines) = steps[i];
            word = fault.Kind switch
            {
                "data-open" => lines.Aggregate(word, static (result, line) => Bits.With(result, line, 1)),
                "data-permuted" => Mapped(word, chip => fault.Map.IndexOf(chip)),
                _ => BothWays(word, reader, fault, lines),
            };
        }

        return word;
    }

    private int BothWays(int word, int reader, Fault fault, int[] lines) => fault.Kind switch
    {
        "data-stuck-low" => lines.Aggregate(word, static (result, line) => Bits.With(result, line, 0)),
        "data-stuck-high" => lines.Aggregate(word, static (result, line) => Bits.With(result, line, 1)),
        "data-shorted" => Shorted(word, lines, fault.Wins, reader),
        "data-swapped" => Bits.With(Bits.With(word, lines[0], Bits.Of(word, lines[1])), lines[1], Bits.Of(word, lines[0])),
        "data-reversed" => Mapped(word, fault.Within == "byte" ? static bus => (bus / 8 * 8) + 7 - (bus % 8) : bus => shape.Width - 1 - bus),
        "data-inverted" => lines.Aggregate(word, static (result, line) => result ^ (1 << line)),
        "data-address-bridged" => Bits.With(word, lines[0], Bridged(Bits.Of(word, lines[0]), Bits.Of(reader, fault.AddressLines[0]), fault.Wins)),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "not of the data lines"),
    };

    private int Open(int word, int line, int reader, Fault fault) => fault.Follows switch
    {
        "low" => 0,
        "high" => 1,
        "chance" => chance.About('D').About(line).Happens(reader >> fault.Run, fault.Ones) ? 1 : 0,
        ['D', ..] => Bits.Of(word, LineNumber.Of(fault.Follows)),
        _ => Bits.Of(reader, LineNumber.Of(fault.Follows)),
    };

    private int Shorted(int word, int[] lines, string wins, int reader)
    {
        var ones = lines.Count(line => Bits.Of(word, line) == 1);
        var agreed = ones == lines.Length ? 1 : 0;
        var level = ones == 0 || ones == lines.Length
            ? agreed
            : wins switch { "low" => 0, "high" => 1, _ => chance.About("short").About(lines.Min()).Happens(reader, 0.5) ? 1 : 0 };
        return lines.Aggregate(word, (result, line) => Bits.With(result, line, level));
    }

    private static int Bridged(int data, int address, string wins) => wins == "low" ? data & address : data | address;

    private int Mapped(int word, Func<int, int> source)
    {
        var result = 0;
        for (var bus = 0; bus < shape.Width; bus++)
            result |= Bits.Of(word, source(bus)) << bus;

        return result;
    }
}
