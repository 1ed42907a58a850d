using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Every single wiring fault of a chip, to be held against a read-back.</summary>
internal static class OtherFaults
{
    /// <summary>Whether a fault that is not the drawn one leaves the same read-back of this image.</summary>
    public static bool Explain(Trial trial, byte[] read)
    {
        var clean = Equivalence.WithoutNoise(trial.Faults);
        var target = clean.Length < trial.Faults.Length ? new Simulation(trial.Bench, trial.Image, clean).Read(trial.Readings[0]) : read;
        return Explaining(trial.Bench.Shape, trial.Image, target).Any(other => !Equivalence.OnUniqueWords(trial, [other]));
    }

    /// <summary>The single wiring faults that make the read-back of the image.</summary>
    public static IEnumerable<Fault> Explaining(ChipShape shape, byte[] image, byte[] read)
    {
        var words = shape.ToWords(image);
        var target = shape.ToWords(read);
        return All(shape, int.Log2(words.Length)).Where(fault => Makes(new Lines(shape, [fault], default), words, target));
    }

    private static bool Makes(Lines lines, int[] words, int[] target)
    {
        for (var a = 0; a < words.Length; a++)
        {
            if (lines.Read(words, a) != target[a])
                return false;
        }

        return true;
    }

    private static IEnumerable<Fault> All(ChipShape shape, int addressLines)
    {
        var address = Names('A', addressLines);
        var data = Names('D', shape.Width);
        string[] levels = ["low", "high"];
        return
        [
            .. from bus in new[] { ("address", address), ("data", data) }
               from kind in new[] { "stuck-low", "stuck-high", "inverted" }
               from line in bus.Item2
               select Fault.Of($"{bus.Item1}-{kind}", line),
            .. from bus in new[] { ("address", address), ("data", data) }
               from first in bus.Item2
               from second in bus.Item2.SkipWhile(line => line != first).Skip(1)
               from fault in new[]
               {
                   Fault.Of($"{bus.Item1}-swapped", first, second),
                   Fault.Of($"{bus.Item1}-shorted", first, second) with { Wins = "low" },
                   Fault.Of($"{bus.Item1}-shorted", first, second) with { Wins = "high" },
               }
               select fault,
            .. from line in data
               from other in address
               from wins in levels
               select Fault.Of("data-address-bridged", line, other) with { Wins = wins },
            Fault.Of("data-reversed"),
            .. shape.Width == 16 ? ImmutableArray.Create(Fault.Of("data-reversed") with { Within = "byte" }) : [],
        ];
    }

    private static string[] Names(char bus, int count) => [.. Enumerable.Range(0, count).Select(line => FormattableString.Invariant($"{bus}{line}"))];
}
