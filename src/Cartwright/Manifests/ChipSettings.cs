using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>What the manifest says of the chip at one site.</summary>
/// <param name="Site">The site's name.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Part">The part; null when not said.</param>
/// <param name="Capacity">Capacity in bytes, for a part the catalogue lacks.</param>
/// <param name="WordOrder">Word order of this chip's file; null for the common one.</param>
public sealed record ChipSettings(string Site, SourcePlace Place, ManifestValue? Part, long? Capacity, WordOrder? WordOrder)
{
    /// <summary>Data lines of a part the catalogue lacks; null when not said.</summary>
    public ManifestValue? Width { get; init; }

    /// <summary>Supply of such a part; null when not said.</summary>
    public ManifestValue? Supply { get; init; }

    /// <summary>Sectors of such a part; null when not said.</summary>
    public ManifestValue? Sectors { get; init; }

    /// <summary>The package fitted; null when not said.</summary>
    public ManifestValue? Package { get; init; }

    /// <summary>Access time in nanoseconds of the chip fitted; null when not said.</summary>
    public double? AccessNs { get; init; }

    /// <summary>Nanoseconds from output enable to data of the chip fitted; null when not said.</summary>
    public double? OutputEnableNs { get; init; }
}
