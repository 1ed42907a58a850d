using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Tests.Roms;

/// <summary>What came of building one region.</summary>
/// <param name="Image">The region; null when something was wrong.</param>
/// <param name="Findings">What was said.</param>
internal sealed record RegionBench(RegionImage? Image, ImmutableArray<Finding> Findings)
{
    public static readonly RegionRule Rule = new("rom", new SizeRule([0x100, 0x200, 0x400], 0x80, "256 bytes to 1 KiB"), "everything") { Fill = 0xEE };

    public IEnumerable<string> Codes => Findings.Select(finding => finding.Code);

    public static RegionBench Build(long? size, byte? fill, params IEnumerable<PlacedSegment> segments)
    {
        var log = new FindingLog();
        var settings = new RegionSettings("rom", new SourcePlace("cart.json", 1), size, new SourcePlace("cart.json", 2), fill);
        var image = RegionBuilder.Build(Rule, settings, segments, new SourcePlace("cart.json", 3), log);
        return new RegionBench(image, log.ToSorted());
    }

    public static RegionBench Fit(params IEnumerable<PlacedSegment> segments) => Build(null, null, segments);

    public static PlacedSegment Segment(string program, long offset, params byte[] bytes) => new("rom", offset, bytes, program, SourcePlace.At(program, 0));
}
