using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms;

/// <summary>What a ROM is assembled from.</summary>
/// <param name="Segments">The programs' bytes at their places.</param>
/// <param name="Header">What is stated and kept of the header.</param>
public sealed record RomRequest(ImmutableArray<PlacedSegment> Segments, HeaderSettings Header)
{
    /// <summary>The game's title; null when there is none.</summary>
    public ManifestValue? Title { get; init; }

    /// <summary>The game's revision; null when there is none.</summary>
    public ManifestValue? Revision { get; init; }

    /// <summary>Sizes and fills by region, letter case ignored.</summary>
    public ImmutableSortedDictionary<string, RegionSettings> Regions { get; init; } =
        ImmutableSortedDictionary.Create<string, RegionSettings>(StringComparer.OrdinalIgnoreCase);

    /// <summary>The place of a key for findings about values nobody stated.</summary>
    public Func<string, SourcePlace> Place { get; init; } = static key => new SourcePlace(null, Key: key);
}
