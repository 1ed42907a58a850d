using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.FaultExperiments;

/// <summary>One image, what is wrong with it, and its reads.</summary>
/// <param name="Bench">How it is written and read.</param>
/// <param name="Image">The expected chip image.</param>
/// <param name="Faults">What is wrong.</param>
/// <param name="Readings">The reads that are made.</param>
internal sealed record Trial(Bench Bench, byte[] Image, ImmutableArray<Fault> Faults, ImmutableArray<Reading> Readings)
{
    public static ImmutableArray<Reading> OneRead { get; } = [new(0)];

    public static ImmutableArray<Reading> ThreeReads { get; } = [new(0), new(1), new(2)];

    /// <summary>Whether leaving it open is what is wanted: too many faults, too much noise, contents nobody knows.</summary>
    public bool MustStayOpen { get; init; }

    /// <summary>Kinds that must all be told, as the name or among the candidates; empty where one name is enough.</summary>
    public ImmutableArray<string> LookAlikes { get; init; } = [];

    /// <summary>Telling words below which leaving it open is right too.</summary>
    public int FewWords { get; init; } = 4;

    /// <summary>Whether other single wiring faults are looked for that explain the read-back as well.</summary>
    public bool SeeksOthers { get; init; }

    /// <summary>Contents the finder is told of, by the kind that needs them; what is not here it does not know.</summary>
    public ImmutableArray<string> Known { get; init; } = [];

    public ImmutableArray<byte[]> Reads => [.. Readings.Select(reading => new Simulation(Bench, Image, Faults).Read(reading))];

    /// <summary>The contents of a fault's own that the finder knows of; null when there are none.</summary>
    public byte[]? KnownImage(params ReadOnlySpan<string> kinds)
    {
        foreach (var fault in Faults)
        {
            if (kinds.Contains(fault.Kind) && Known.Contains(fault.Kind))
                return [.. fault.Image];
        }

        return null;
    }
}
