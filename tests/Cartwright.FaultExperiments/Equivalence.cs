using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>Whether two lists of faults are the same in the end.</summary>
internal static class Equivalence
{
    private const ulong ProbeSeed = 0x5EED;

    /// <summary>Whether the named faults and the drawn ones leave the same read-backs of an image whose words tell every place.</summary>
    public static bool OnUniqueWords(Trial trial, ImmutableArray<Fault> named)
    {
        var probe = new SmallRandom(ProbeSeed).Bytes(trial.Image.Length);
        var drawn = new Simulation(trial.Bench, probe, Settled(trial.Faults));
        var told = new Simulation(trial.Bench, probe, Settled(named));
        return Try(() => trial.Readings.All(reading => drawn.Read(reading).AsSpan().SequenceEqual(told.Read(reading))));
    }

    /// <summary>Whether the names are those that were drawn, and leave these very reads: a parameter the image hides does not count.</summary>
    public static bool OnThisImage(Trial trial, ImmutableArray<byte[]> reads, ImmutableArray<Fault> named) =>
        Names(named).SequenceEqual(Names(trial.Faults)) && Rebuilds(trial, reads, named);

    /// <summary>Whether the faults leave exactly these reads.</summary>
    public static bool Rebuilds(Trial trial, ImmutableArray<byte[]> reads, ImmutableArray<Fault> named)
    {
        var told = new Simulation(trial.Bench, trial.Image, named);
        return Try(() => trial.Readings.Zip(reads).All(pair => told.Read(pair.First).AsSpan().SequenceEqual(pair.Second)));
    }

    /// <summary>The faults without the noise that lies over them.</summary>
    public static ImmutableArray<Fault> WithoutNoise(ImmutableArray<Fault> faults) =>
        faults.Length == 1 ? faults : [.. faults.Where(static fault => fault.Kind != "random-noise")];

    private static IEnumerable<string> Names(ImmutableArray<Fault> faults) =>
        WithoutNoise(faults).Select(static fault => $"{fault.Kind} {string.Join(' ', fault.Lines)} {fault.How} {fault.Follows}");

    // Rates and shares are measured, so they come out near the drawn ones and never equal; damaged cells may be called weak ones.
    private static ImmutableArray<Fault> Settled(ImmutableArray<Fault> faults) => [.. WithoutNoise(faults).Select(Settled)];

    private static Fault Settled(Fault fault) => fault.Kind switch
    {
        "data-open" or "address-open" when fault.Follows == "chance" => fault with { Ones = 0.5, Run = 0 },
        "cells-damaged" => new Fault("under-programmed") { Share = 0.01 },
        "under-programmed" => new Fault("under-programmed") { Share = 0.01 },
        "random-noise" => fault with { Rate = 0.01 },
        "bounce" => fault with { Rate = 0.01, Threshold = 6 },
        "read-too-early" when fault.Share < 1 => fault with { Share = 0.5 },
        "contact" => fault with { Inner = Settled(fault.Inner!) },
        _ => fault,
    };

    // A finder may name parameters that make no sense for this chip; such a name is no equivalent.
    private static bool Try(Func<bool> compare)
    {
        try
        {
            return compare();
        }
        catch (Exception fault) when (fault is ArgumentException or IndexOutOfRangeException or DivideByZeroException or KeyNotFoundException)
        {
            return false;
        }
    }
}
