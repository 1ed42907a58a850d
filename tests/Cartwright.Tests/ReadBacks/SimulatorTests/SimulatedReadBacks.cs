using System.Collections.Immutable;
using Cartwright.FaultSimulator;

namespace Cartwright.Tests.ReadBacks.SimulatorTests;

/// <summary>Short ways to a simulated read-back.</summary>
internal static class SimulatedReadBacks
{
    public static readonly ChipShape Bytes = new(8);

    /// <summary>The worked miniature of 16 words: each holds its own address.</summary>
    public static byte[] Counting => [.. Enumerable.Range(0, 16).Select(a => (byte)a)];

    public static byte[] Random(int size, ulong seed = 1) => new SmallRandom(seed).Bytes(size);

    public static byte[] Read(byte[] image, params ImmutableArray<Fault> faults) => new Simulation(new Bench(Bytes), image, faults).Read(new Reading(0));

    public static byte[] Read16(byte[] image, params ImmutableArray<Fault> faults) =>
        new Simulation(new Bench(new ChipShape(16)), image, faults).Read(new Reading(0));

    public static byte[] ReadInPlace(byte[] image, params ImmutableArray<Fault> faults) =>
        new Simulation(new Bench(Bytes) { WrittenInPlace = true }, image, faults).Read(new Reading(0));
}
