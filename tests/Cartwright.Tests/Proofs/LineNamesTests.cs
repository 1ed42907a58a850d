using Cartwright.Boards;
using Cartwright.Proofs;
using Xunit;

namespace Cartwright.Tests.Proofs;

/// <summary>Lines of chip and bus, both ways.</summary>
public sealed class LineNamesTests
{
    private static readonly Site Straight = new("U1", "rom", 8, Lane.High, 0, null, ChipFill.Repeat);

    private static readonly Site Crossed = new("U1", "rom", 8, Lane.Word, 0, null, ChipFill.Repeat)
    {
        AddressLines = [2, 0, 1],
        DataLines = DataLineOrders.Find("reversed", 8),
    };

    [Fact]
    public void A_chip_without_a_board_has_its_own_names_only() => Assert.Equal(new LineName("A12", null), LineNames.OfLooseChip.Of("A12"));

    [Theory]
    [InlineData("A0", "A1")]
    [InlineData("A14", "A15")]
    [InlineData("D3", "D11")]
    public void The_upper_lane_of_a_wide_bus_counts_words_and_upper_data_lines(string chip, string bus) =>
        Assert.Equal(new LineName(chip, bus), LineNames.OfChip(Straight, 32768).Of(chip));

    [Theory]
    [InlineData("A0", "A2")]
    [InlineData("D3", "D19")]
    public void The_third_lane_of_a_32_bit_bus_counts_every_fourth_byte(string chip, string bus) =>
        Assert.Equal(new LineName(chip, bus), LineNames.OfChip(Straight with { Lane = Lane.Third, LaneCount = 4 }, 32768).Of(chip));

    // Bus A0 meets A2 of the chip, A1 meets A0, A2 meets A1; the others run straight, and the data lines in reverse.
    [Theory]
    [InlineData("A2", "A0")]
    [InlineData("A0", "A1")]
    [InlineData("A1", "A2")]
    [InlineData("A5", "A5")]
    [InlineData("D0", "D7")]
    [InlineData("D6", "D1")]
    public void Crossed_lines_are_told_from_either_end(string chip, string bus)
    {
        Assert.Equal(new LineName(chip, bus), LineNames.OfChip(Crossed, 64).Of(chip));
        Assert.Equal(new LineName(chip, bus), LineNames.ThroughBoard(Crossed, 64).Of(bus));
    }

    [Fact]
    public void A_line_that_is_tied_or_latched_meets_no_line_of_the_bus()
    {
        var site = Straight with { Lane = Lane.Word, Ties = Straight.Ties.Add(5, LineTie.High), Latched = [4] };
        Assert.Equal(new LineName("A5", null), LineNames.OfChip(site, 64).Of("A5"));
        Assert.Equal(new LineName("A4", null), LineNames.OfChip(site, 64).Of("A4"));
        Assert.Equal(new LineName("A3", "A3"), LineNames.OfChip(site, 64).Of("A3"));
    }

    [Fact]
    public void A_chip_too_small_for_the_sites_list_keeps_its_own_names() => Assert.Equal("A1", LineNames.ThroughBoard(Crossed, 4).Of("A1").Chip);
}
