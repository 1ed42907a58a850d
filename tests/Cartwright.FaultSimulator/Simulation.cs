using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>Makes the read-back that a list of faults leaves, stage by stage along the way of the signal.</summary>
/// <param name="bench">How the chip is written and read.</param>
/// <param name="expected">The chip image that is expected.</param>
/// <param name="faults">What is wrong. Faults of one stage act in the order of this list.</param>
public sealed class Simulation(Bench bench, byte[] expected, params ImmutableArray<Fault> faults)
{
    private readonly ChipShape shape = bench.Shape;

    /// <summary>One read.</summary>
    public byte[] Read(Reading reading)
    {
        var sent = SentFaults.Apply(FileFaults.Apply(expected, At(Stage.File, reading)), At(Stage.Sent, reading));
        var landed = LandedFaults.Apply(shape, bench.WrittenInPlace ? WriteInPlace(sent, reading) : sent, At(Stage.Landed, reading));
        var cells = CellFaults.Apply(landed, At(Stage.Cells, reading), new Chance(bench.Seed));
        var weak = WeakFaults.Apply(cells, At(Stage.Weak, reading), Programming(reading), Chance(reading));
        var board = BoardFaults.Apply(ChipFaults.Apply(shape, weak, At(Stage.Chip, reading), reading), At(Stage.Board, reading));
        var words = ThroughLines(shape.ToWords(board), reading);
        words = BusFaults.Apply(shape, words, At(Stage.Bus, reading), Chance(reading));
        words = TimeFaults.Apply(shape, words, At(Stage.Time, reading), Chance(reading));
        return NoiseFaults.Apply(shape.ToBytes(words), At(Stage.Noise, reading), Chance(reading));
    }

    private int[] ThroughLines(int[] array, Reading reading)
    {
        var lines = new Lines(shape, [.. At(Stage.Address, reading), .. At(Stage.Data, reading)], Chance(reading));
        var words = new int[array.Length];
        for (var a = 0; a < words.Length; a++)
            words[a] = lines.Read(array, a);

        return words;
    }

    /// <summary>From erased cells, every x: c[f(x)] &amp;= h(E[x]); in a RAM the last x stays.</summary>
    private byte[] WriteInPlace(byte[] file, Reading reading)
    {
        var address = new AddressPath(Wiring(Stage.Address), Programming(reading));
        var data = new DataPath(shape, Wiring(Stage.Data), Programming(reading));
        var words = shape.ToWords(file);
        var cells = new int[words.Length];
        Array.Fill(cells, shape.AllOnes);
        for (var x = 0; x < words.Length; x++)
        {
            var chip = address.ToChip(x);
            var word = data.ToChip(words[x], x);
            cells[chip] = bench.Ram ? word : cells[chip] & word;
        }

        return shape.ToBytes(cells);
    }

    // A loose contact was good while the chip was written.
    private ImmutableArray<Fault> Wiring(Stage stage) => [.. faults.Where(fault => fault.Inner is null && FaultStages.Of(fault) == stage)];

    private ImmutableArray<Fault> At(Stage stage, Reading reading) =>
        [.. faults.Select(fault => Present(fault, reading)).OfType<Fault>().Where(fault => FaultStages.Of(fault) == stage)];

    private static Fault? Present(Fault fault, Reading reading) =>
        fault.Inner is null ? fault : fault.BadInsertions.Contains(reading.Insertion) ? fault.Inner : null;

    private Chance Chance(Reading reading) => new Chance(bench.Seed).About("read").About(reading.Number);

    private Chance Programming(Reading reading) => new Chance(bench.Seed).About("programming").About(reading.Programming);
}
