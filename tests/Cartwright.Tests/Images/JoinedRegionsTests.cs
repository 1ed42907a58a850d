using Cartwright.Tests.Boards;
using Xunit;

namespace Cartwright.Tests.Images;

/// <summary>A chip that serves two regions holds each where its select line looks for it.</summary>
public sealed class JoinedRegionsTests
{
    private const string Join = """
        "joins": [ { "name": "both", "parts": [ { "region": "prg" }, { "region": "chr", "at": "4KiB" } ] } ], "sites": [ { "site": "U1", "region": "both" } ]
        """;

    [Fact]
    public void Both_regions_lie_at_their_places_with_erased_bytes_between()
    {
        var (prg, chr) = (TestBytes.L(3072), TestBytes.L(2048)[1024..]);
        var bench = new BoardBench(Join);
        var chip = Assert.Single(bench.Chips(BoardBench.Region(prg, "prg"), BoardBench.Region(chr, "chr")));
        Assert.Equal(prg, chip.Bytes[..3072].ToArray());
        Assert.All(chip.Bytes[3072..4096].ToArray(), value => Assert.Equal(0xFF, value));
        Assert.Equal(chr, chip.Bytes[4096..5120].ToArray());
        Assert.DoesNotContain(bench.Findings, finding => finding.Severity == Cartwright.Findings.FindingSeverity.Error);
    }

    [Fact]
    public void A_region_that_runs_into_the_next_is_told()
    {
        var bench = new BoardBench(Join);
        bench.Chips(BoardBench.Region(TestBytes.L(5000), "prg"), BoardBench.Region(TestBytes.L(2048), "chr"));
        Assert.Contains("CW5005", bench.Codes);
    }

    [Fact]
    public void A_region_that_a_join_holds_in_part_only_is_told()
    {
        var bench = new BoardBench("""
            "joins": [ { "name": "both", "parts": [ { "region": "prg", "length": "1KiB" }, { "region": "prg", "start": "1KiB", "length": "1KiB", "at": "4KiB" } ] } ], "sites": [ { "site": "U1", "region": "both" } ]
            """);
        bench.Chips(BoardBench.Region(TestBytes.L(2048), "prg"));
        Assert.DoesNotContain("CW5005", bench.Codes);
        bench.Chips(BoardBench.Region(TestBytes.L(3072), "prg"));
        Assert.Contains("CW5005", bench.Codes);
    }

    [Fact]
    public void A_region_outside_the_join_has_no_chip()
    {
        var bench = new BoardBench(Join);
        bench.Chips(BoardBench.Region(TestBytes.L(1024), "prg"), BoardBench.Region(TestBytes.L(1024), "samples"));
        Assert.Contains("CW5006", bench.Codes);
    }
}
