using System.Globalization;
using Cartwright.FaultSimulator;
using Cartwright.ReadBacks;
using Cartwright.TestImages;
using Xunit;
using Fault = Cartwright.FaultSimulator.Fault;

namespace Cartwright.Tests.ReadBacks;

/// <summary>What is told of reads that vary, and what one more read, insertion or programming adds.</summary>
public sealed class VaryingReadsTests
{
    private static readonly ChipShape Chip = new(8);
    private static readonly WordShape Shape = new(8, false);
    private static readonly byte[] Image = SignatureImage.Make(0x8000, Shape, 3);

    [Fact]
    public void A_floating_line_is_named_from_two_reads_and_a_candidate_from_one()
    {
        var fault = Fault.Of("data-open", "D3");

        Assert.Contains("data-open D3 follows=chance", Assert.Single(Find([new(0), new(1)], fault).Faults).ToString(), StringComparison.Ordinal);
        var one = Find([new(0)], fault);
        Assert.Empty(one.Faults);
        Assert.Contains("data-open D3 follows=chance", Assert.Single(one.Candidates[0]).ToString(), StringComparison.Ordinal);
        Assert.NotNull(one.Next);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.01)]
    public void Noise_is_named_with_the_rate_it_was_made_with(double rate)
    {
        var verdict = Find([new(0), new(1), new(2)], new Fault("random-noise") { Rate = rate });

        var noise = Assert.Single(verdict.Faults);
        Assert.Equal(FaultKinds.RandomNoise, noise.Kind);
        Assert.InRange(double.Parse(noise["rate"]!, CultureInfo.InvariantCulture), rate * 0.8, rate * 1.2);
        Assert.InRange(verdict.Statistics!.ErrorRate, rate * 0.8, rate * 1.2);
    }

    [Fact]
    public void Of_one_read_in_noise_nothing_is_named() => Assert.Empty(Find([new(0)], new Fault("random-noise") { Rate = 0.01 }).Faults);

    [Fact]
    public void Too_much_noise_is_left_open()
    {
        var verdict = Find([new(0), new(1), new(2)], new Fault("random-noise") { Rate = 0.1 });

        Assert.False(verdict.Equal);
        Assert.Empty(verdict.Faults);
    }

    [Fact]
    public void Damaged_cells_and_weak_ones_are_told_apart_by_another_programming()
    {
        var fault = new Fault("cells-damaged") { Share = 0.01 };
        var before = Find([new(0), new(1)], fault);
        var after = Find([new(0), new(1, 1, 1)], fault);

        Assert.Equal(FaultKinds.CellsDamaged, Assert.Single(before.Faults).Kind);
        Assert.Equal(FaultKinds.UnderProgrammed, Assert.Single(Assert.Single(before.Candidates)).Kind);
        Assert.NotNull(before.Next);
        Assert.Equal(FaultKinds.CellsDamaged, Assert.Single(after.Faults).Kind);
        Assert.Empty(after.Candidates);
    }

    [Fact]
    public void Weak_cells_are_read_by_their_zeros()
    {
        var verdict = Find([new(0), new(1), new(2)], new Fault("under-programmed") { Share = 0.01 });

        Assert.Equal(FaultKinds.UnderProgrammed, Assert.Single(verdict.Faults).Kind);
        Assert.Equal("and", verdict.Statistics!.Rule);
    }

    [Fact]
    public void A_contact_is_told_with_its_insertions_and_not_where_the_chip_was_written_again_between()
    {
        var fault = new Fault("contact") { Lines = ["A5"], Inner = Fault.Of("address-stuck-low", "A5"), BadInsertions = [2] };

        var contact = Assert.Single(Find([new(0, 1), new(1, 2), new(2, 2)], fault).Faults);
        Assert.Equal(FaultKinds.Contact, contact.Kind);
        Assert.Equal(["A5"], contact.Lines);
        Assert.Equal("[2]", contact["badInsertions"]);
        Assert.Empty(Find([new(0, 1), new(1, 2, 1), new(2, 2, 1)], fault).Faults);
    }

    private static Verdict Find(Reading[] readings, Fault fault)
    {
        var bench = new Simulation(new Bench(Chip, 7), Image, fault);
        return FaultFinder.Find(new ProofRequest(Image, Shape, [.. readings.Select(reading => new ReadBack(bench.Read(reading), reading.Insertion, reading.Programming))]));
    }
}
