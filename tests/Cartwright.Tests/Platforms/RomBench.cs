using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;
using Xunit;

namespace Cartwright.Tests.Platforms;

/// <summary>Assembles a ROM from bytes in memory, for tests of platforms.</summary>
internal sealed class RomBench(Platform platform)
{
    private readonly List<PlacedSegment> _segments = [];
    private readonly Dictionary<string, ManifestValue> _header = [];
    private readonly Dictionary<string, RegionSettings> _regions = [];
    private HeaderKeep _keep = HeaderKeep.Unsaid;

    public FindingLog Log { get; } = new();

    public string? Title { get; init; } = "LANTERN TIDE";

    public string? Revision { get; init; }

    public RomBench Program(string region, long offset, byte[] bytes, string file = "main.bin")
    {
        _segments.Add(new PlacedSegment(region, offset, bytes, file, SourcePlace.At(file, 0)));
        return this;
    }

    public RomBench Header(string field, string value)
    {
        _header[field] = new ManifestValue(value, new SourcePlace("cart.json", Key: "header:" + field));
        return this;
    }

    public RomBench Keep(bool? all, params string[] fields)
    {
        _keep = new HeaderKeep(all, [.. fields.Select(field => new ManifestValue(field, SourcePlace.None))]);
        return this;
    }

    public RomBench Size(string region, long? size, byte? fill = null)
    {
        _regions[region] = new RegionSettings(region, SourcePlace.None, size, SourcePlace.None, fill);
        return this;
    }

    /// <summary>Assembles whatever comes of it; the findings are in <see cref="Log"/>.</summary>
    public CartView? TryAssemble()
    {
        var header = new HeaderSettings(HeaderSettings.None.Values.AddRange(_header), _keep);
        var request = new RomRequest([.. _segments], header)
        {
            Title = Value(Title),
            Revision = Value(Revision),
            Regions = _regions.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase),
        };
        var layout = platform.Layout(header);
        RomAssembler.CheckSettings(platform, layout, request, Log);
        return RomAssembler.Assemble(platform, layout, request, Log);
    }

    /// <summary>Assembles, and fails the test when there is an error.</summary>
    public CartView Assemble()
    {
        var cart = TryAssemble();
        Assert.Empty(Log.ToSorted().Where(finding => finding.Severity == FindingSeverity.Error).Select(finding => $"{finding.Code} {finding.Message}"));
        return cart!;
    }

    /// <summary>The codes of all findings, sorted, each as often as it came.</summary>
    public IEnumerable<string> Codes() => Log.ToSorted().Select(finding => finding.Code).Order(StringComparer.Ordinal);

    private static ManifestValue? Value(string? text) => text is null ? null : new ManifestValue(text, SourcePlace.None);
}
