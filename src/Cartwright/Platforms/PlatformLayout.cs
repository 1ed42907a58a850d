using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms;

/// <summary>A platform with its options settled: regions, headers, addresses.</summary>
/// <param name="Variant">The settled options in words, for documents: <c>lorom</c>; the platform's id when there are none.</param>
/// <param name="Regions">The regions in the order of the exchange file.</param>
/// <param name="Headers">The headers in the order they are written; one without a region is a container.</param>
/// <param name="Addresses">The console's addresses.</param>
public sealed record PlatformLayout(
    string Variant,
    ImmutableArray<RegionRule> Regions,
    ImmutableArray<HeaderTable> Headers,
    AddressMap Addresses)
{
    /// <summary>Places a program can go to by name.</summary>
    public ImmutableArray<NamedPlace> Places { get; init; } = [];

    /// <summary>The processor's vectors, where they are the program's and no part of a header: shown, never written.</summary>
    public ImmutableArray<HeaderTable> Vectors { get; init; } = [];
}
