using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.FaultSimulator;
using Cartwright.Proofs;
using Cartwright.ReadBacks;
using Xunit;

namespace Cartwright.Tests.Proofs;

/// <summary>Lines that are named more than once.</summary>
public sealed class SharedLinesTests
{
    // 19 lines: 8 of data, 11 of addresses.
    private static readonly byte[] Image = new SmallRandom(8).Bytes(2048);

    private static UnitProof Unit(string name, params ImmutableArray<(string Site, string Line)> stuck) => new(name,
    [
        .. stuck.Select(row =>
        {
            var site = new Site(row.Site, "rom", 8, row.Site == "U1" ? Lane.High : Lane.Low, 0, null, ChipFill.Repeat);
            var subject = new ProofSubject(row.Site, Image, new WordShape(8, HighFirst: false)) { Lines = LineNames.OfChip(site, Image.Length) };
            FaultSimulator.Fault[] faults = row.Line.Length == 0 ? [] : [new(row.Line[0] == 'A' ? "address-stuck-low" : "data-stuck-low") { Lines = [row.Line] }];
            var read = new Simulation(new Bench(new ChipShape(8)), Image, [.. faults]).Read(new Reading(0));
            return Prover.Prove(subject, [new ReadBack(read)], ProofSettings.None, TestContext.Current.CancellationToken);
        }),
    ]);

    [Fact]
    public void Three_of_four_faulty_units_with_one_line_point_at_the_board()
    {
        var shared = Assert.Single(SharedLines.AcrossUnits([Unit("A", ("U1", "A5")), Unit("B", ("U1", "")), Unit("C", ("U1", "A5")), Unit("D", ("U1", "A5")), Unit("E", ("U1", "D1"))]));
        Assert.Equal(("A5", "U1", 4), (shared.Line, shared.Site, shared.OutOf));
        Assert.Equal(["A", "C", "D"], shared.Where);
        // Four ways to choose three of four, each one chance in 19 squared.
        Assert.Equal(4.0 / (19 * 19), shared.Chance, 12);
        Assert.True(shared.PointsAtTheBoard);
    }

    [Fact]
    public void Two_of_two_may_be_chance()
    {
        var shared = Assert.Single(SharedLines.AcrossUnits([Unit("A", ("U1", "A5")), Unit("B", ("U1", "A5"))]));
        Assert.Equal(1.0 / 19, shared.Chance, 12);
        Assert.False(shared.PointsAtTheBoard);
    }

    [Fact]
    public void Different_lines_share_nothing() => Assert.Empty(SharedLines.AcrossUnits([Unit("A", ("U1", "A5")), Unit("B", ("U1", "A6")), Unit("C", ("U1", ""))]));

    [Fact]
    public void An_address_line_of_two_chips_is_one_line_of_the_bus_and_a_data_line_is_not()
    {
        var shared = Assert.Single(SharedLines.AcrossChips(Unit("A", ("U1", "A5"), ("U2", "A5"))));
        Assert.Equal(("A6", null), (shared.Line, shared.Site));
        Assert.Equal(["U1", "U2"], shared.Where);
        Assert.True(shared.PointsAtTheBoard);
        Assert.Empty(SharedLines.AcrossChips(Unit("A", ("U1", "D1"), ("U2", "D1"))));
    }
}
