using System.Collections.Immutable;

namespace Cartwright.Roms;

/// <summary>The logical contents of all regions, as the console sees them.</summary>
/// <param name="Regions">The regions in the order of the exchange file.</param>
public sealed record Rom(ImmutableArray<RegionImage> Regions)
{
    /// <summary>A region by name; null when the cart has none of it.</summary>
    /// <param name="region">The region's name.</param>
    public RegionImage? this[string region] => Regions.FirstOrDefault(image => string.Equals(image.Name, region, StringComparison.OrdinalIgnoreCase));

    /// <summary>Length of a region in bytes; 0 for one the cart does not have.</summary>
    /// <param name="region">The region's name.</param>
    public long LengthOf(string region) => this[region]?.Length ?? 0;
}
