using Cartwright.Roms;
using Xunit;
using static Cartwright.Tests.Roms.RegionBench;

namespace Cartwright.Tests.Roms;

public sealed class RegionBuilderTests
{
    [Theory]
    [InlineData(1, 0x100)]
    [InlineData(0x100, 0x100)]
    [InlineData(0x101, 0x200)]
    [InlineData(0x180, 0x200)]
    [InlineData(0x400, 0x400)]
    public void Fit_takes_the_smallest_customary_size(int length, int size) => Assert.Equal(size, Fit(Segment("a", 0, new byte[length])).Image!.Length);

    [Theory]
    [InlineData(0x180)]
    [InlineData(0x200)]
    [InlineData(0x380)]
    public void A_stated_size_between_the_customary_ones_is_taken_when_the_steps_allow(int size) =>
        Assert.Equal(size, Build(size, null, Segment("a", 0, 1)).Image!.Length);

    [Theory]
    [InlineData(0, "256")]
    [InlineData(0x101, "512")]
    [InlineData(0x80, "256")]
    [InlineData(0x3FF, "1KiB")]
    public void An_illegal_size_is_told_with_the_next_legal_one(long size, string next)
    {
        var bench = Build(size, null, Segment("a", 0, 1));
        Assert.Null(bench.Image);
        var finding = Assert.Single(bench.Findings);
        Assert.Equal((RomFindings.IllegalSize.Code, 2), (finding.Code, finding.Place.Line));
        Assert.Equal($"The next legal size is {next}.", finding.Advice);
    }

    [Fact]
    public void An_illegal_size_beyond_the_largest_has_no_next() =>
        Assert.Equal(RomFindings.IllegalSize.Remedy, Assert.Single(Build(0x480, null, Segment("a", 0, 1)).Findings).Advice);

    [Fact]
    public void A_size_too_small_is_told_by_how_much_and_whose_program_it_is()
    {
        var bench = Build(0x100, null, Segment("main.bin", 0, new byte[0x100]), Segment("levels.bin", 0xF0, new byte[0x33]), Segment("late.bin", 0x40, 0));
        Assert.Null(bench.Image);
        var finding = bench.Findings.Single(finding => finding.Code == RomFindings.TooSmall.Code);
        Assert.Contains("0x000023 (35 bytes) too small", finding.Message, StringComparison.Ordinal);
        Assert.Contains("levels.bin (0x0000F0-0x000122) pushes the end to 0x000123", finding.Message, StringComparison.Ordinal);
        Assert.Equal("The smallest legal size that holds it is 512.", finding.Advice);
    }

    [Fact]
    public void Programs_beyond_the_largest_size_are_told_with_the_program_that_reaches_furthest()
    {
        var finding = Assert.Single(Fit(Segment("a", 0, 1), Segment("b", 0x400, 1)).Findings);
        Assert.Equal((RomFindings.TooLarge.Code, 1), (finding.Code, finding.Place.Line));
        Assert.Contains("b (0x000400-0x000400)", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_far_away_allocates_nothing()
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var bench = Fit(Segment("a", 0, 1), Segment("b", 1L << 60, 1));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1 << 20);
        Assert.Equal([RomFindings.TooLarge.Code], bench.Codes);
    }

    [Fact]
    public void Gaps_are_filled_with_the_platform_s_value_or_the_stated_one()
    {
        var own = Fit(Segment("a", 2, 1, 2), Segment("b", 6, 3)).Image!;
        Assert.Equal([0xEE, 0xEE, 1, 2, 0xEE, 0xEE, 3, 0xEE], own.Bytes.Span[..8].ToArray());
        Assert.False(own.Bytes.Span[7..].ContainsAnyExcept((byte)0xEE));
        var stated = Build(null, 0, Segment("a", 2, 1, 2)).Image!;
        Assert.Equal([0, 0, 1, 2, 0], stated.Bytes.Span[..5].ToArray());
        Assert.Equal(0, stated.Fill);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void An_empty_region_is_an_error_only_where_it_is_required(bool required)
    {
        var log = new Cartwright.Findings.FindingLog();
        Assert.Null(RegionBuilder.Build(Rule with { Required = required }, null, [], default, log));
        Assert.Equal(required ? [RomFindings.EmptyRegion.Code] : [], log.ToSorted().Select(finding => finding.Code));
    }

    [Fact]
    public void The_segment_that_covers_a_range_is_found()
    {
        var image = Fit(Segment("a", 2, 1, 2), Segment("b", 6, 3)).Image!;
        Assert.Null(image.CoveringSegment(0, 2));
        Assert.Equal("a", image.CoveringSegment(0, 3)!.Program);
        Assert.Equal("a", image.CoveringSegment(3, 100)!.Program);
        Assert.Null(image.CoveringSegment(4, 2));
        Assert.Equal("b", image.CoveringSegment(4, 3)!.Program);
    }

    [Theory]
    [InlineData(0x8000, "exactly 32 KiB")]
    [InlineData(0x20000, "a power of two from 32 KiB to 128 KiB")]
    public void Powers_of_two_are_all_there_is_between_them(long largest, string words)
    {
        var rule = SizeRule.PowersOfTwo(0x8000, largest);
        Assert.Equal(words, rule.Words);
        Assert.True(rule.Allows(0x8000));
        Assert.False(rule.Allows(0xC000));
        Assert.Equal((0x8000, null), (rule.Fit(1), rule.Fit(largest + 1)));
    }
}
