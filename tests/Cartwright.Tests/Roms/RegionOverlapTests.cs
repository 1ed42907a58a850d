using Cartwright.Roms;
using Xunit;
using static Cartwright.Tests.Roms.RegionBench;

namespace Cartwright.Tests.Roms;

public sealed class RegionOverlapTests
{
    private const int Cases = 1500;

    [Fact]
    public void Equal_bytes_are_noted_with_both_files_and_ranges()
    {
        var bench = Fit(Segment("a.bin", 0, 1, 2, 3, 4), Segment("b.bin", 2, 3, 4, 5));
        var finding = Assert.Single(bench.Findings);
        Assert.Equal(RomFindings.SameTwice.Code, finding.Code);
        Assert.Equal("a.bin (0x000000-0x000003) and b.bin (0x000002-0x000004) both hold 0x000002-0x000003 of the region `rom`, with equal bytes.", finding.Message);
        Assert.Equal([1, 2, 3, 4, 5, 0xEE], bench.Image!.Bytes.Span[..6].ToArray());
        Assert.Equal(5, bench.Image.Coverage.Sum(segment => segment.Length));
    }

    [Fact]
    public void Different_bytes_are_an_error_with_the_first_that_differs()
    {
        var bench = Fit(Segment("b.bin", 2, 3, 9, 5), Segment("a.bin", 0, 1, 2, 3, 4));
        Assert.Null(bench.Image);
        var finding = Assert.Single(bench.Findings);
        Assert.Equal((RomFindings.Overlap.Code, "b.bin"), (finding.Code, finding.Place.File));
        Assert.Equal(
            "a.bin (0x000000-0x000003) and b.bin (0x000002-0x000004) overlap at 0x000002-0x000003 of the region `rom`; they first differ at 0x000003: 0x04 against 0x09.",
            finding.Message);
    }

    [Fact]
    public void Three_that_meet_are_told_in_pairs_with_their_whole_ranges()
    {
        var bench = Fit(Segment("a", 0, 1, 1, 1, 1), Segment("b", 2, 1, 1, 1, 1), Segment("c", 3, 1, 1, 1, 1));
        Assert.Equal(
            [
                "a (0x000000-0x000003) and b (0x000002-0x000005) both hold 0x000002-0x000003",
                "a (0x000000-0x000003) and c (0x000003-0x000006) both hold 0x000003-0x000003",
                "b (0x000002-0x000005) and c (0x000003-0x000006) both hold 0x000004-0x000005",
            ],
            bench.Findings.Select(finding => finding.Message[..finding.Message.IndexOf(" of the", StringComparison.Ordinal)]).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_short_segment_inside_a_long_one_is_covered_by_it()
    {
        var bench = Fit(Segment("long", 0, 1, 2, 3, 4, 5), Segment("short", 1, 2), Segment("other", 3, 4, 5));
        Assert.Equal("long", Assert.Single(bench.Image!.Coverage).Program);
        Assert.Equal(2, bench.Findings.Length);
    }

    // The plainest model: a dictionary of bytes.
    [Fact]
    public void Any_order_of_segments_gives_the_same_region_or_the_same_refusal()
    {
        var random = new Random(21);
        var accepted = 0;
        for (var i = 0; i < Cases; i++)
        {
            var (segments, model, clash, repeat) = Throw(random);
            foreach (var order in (PlacedSegment[][])[segments, [.. segments.Reverse()], [.. segments.OrderBy(_ => random.Next())]])
            {
                var bench = Fit(order);
                Assert.Equal(clash, bench.Image is null);
                Assert.Equal(clash, bench.Codes.Contains(RomFindings.Overlap.Code));
                if (clash) continue;
                Assert.Equal(repeat, bench.Codes.Contains(RomFindings.SameTwice.Code));
                Assert.Equal(model, bench.Image!.Bytes.ToArray());
                Assert.All(bench.Image.Coverage.Zip(bench.Image.Coverage.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.Offset));
            }

            accepted += clash ? 0 : 1;
        }

        Assert.InRange(accepted, Cases / 10, Cases - (Cases / 10));
    }

    private static (PlacedSegment[] Segments, byte[] Model, bool Clash, bool Repeat) Throw(Random random)
    {
        var model = new byte[0x100];
        model.AsSpan().Fill(0xEE);
        var (known, clash, repeat) = (new HashSet<long>(), false, false);
        var segments = new PlacedSegment[random.Next(1, 7)];
        for (var i = 0; i < segments.Length; i++)
        {
            var offset = random.Next(40);
            var bytes = new byte[random.Next(1, 16)];
            for (var at = 0; at < bytes.Length; at++)
            {
                bytes[at] = random.Next(30) == 0 ? (byte)0xAA : (byte)(offset + at);
                if (!known.Add(offset + at))
                {
                    repeat = true;
                    clash |= model[offset + at] != bytes[at];
                }

                model[offset + at] = bytes[at];
            }

            segments[i] = Segment($"{(char)('a' + random.Next(3))}", offset, bytes);
        }

        return (segments, model, clash, repeat);
    }
}
