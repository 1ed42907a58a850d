using Cartwright.FaultSimulator;
using Cartwright.ReadBacks;
using Xunit;
using Fault = Cartwright.FaultSimulator.Fault;

namespace Cartwright.Tests.ReadBacks;

/// <summary>Images with equal banks let two kinds leave one read-back: then nothing is named, and both are candidates.</summary>
public sealed class AmbiguousReadBackTests
{
    private const int BankSize = 0x2000;
    private static readonly byte[] A = new SmallRandom(11).Bytes(BankSize);
    private static readonly byte[] B = new SmallRandom(12).Bytes(BankSize);
    private static readonly byte[] Erased = [.. Enumerable.Repeat((byte)0xFF, BankSize)];

    [Fact]
    public void Banks_in_an_order_that_a_rotation_leaves_too() =>
        Both([.. A, .. Erased, .. Erased, .. Erased], new Fault("banks-reordered") { BankSize = BankSize, Order = [1, 2, 3, 0] }, FaultKinds.BanksReordered, FaultKinds.Rotated);

    [Fact]
    public void A_range_that_is_not_selected_and_a_line_that_was_dead_while_writing() =>
        Both([.. A, .. B, .. A, .. B], new Fault("not-selected-range") { Start = 0, Length = 2 * BankSize }, FaultKinds.NotSelectedRange, FaultKinds.AddressDeadWhileWriting);

    [Fact]
    public void A_bus_conflict_and_a_line_that_is_stuck() =>
        Both([.. A, .. B, .. Erased, .. Erased], new Fault("bus-conflict") { BankSize = BankSize, Values = [0, 0, 2, 3] }, FaultKinds.BusConflict, FaultKinds.AddressStuckLow);

    private static void Both(byte[] image, Fault fault, FaultKind drawn, FaultKind other)
    {
        var read = new Simulation(new Bench(new ChipShape(8)), image, fault).Read(new Reading(0));
        var verdict = FaultFinder.Find(new ProofRequest(image, new WordShape(8, false), [new ReadBack(read)]));

        Assert.Empty(verdict.Faults);
        Assert.Contains(verdict.Candidates, list => list[0].Kind == drawn);
        Assert.Contains(verdict.Candidates, list => list[0].Kind == other);
        Assert.NotNull(verdict.Next);
    }
}
