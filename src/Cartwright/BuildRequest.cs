using Cartwright.Manifests;

namespace Cartwright;

/// <summary>What is to be built.</summary>
/// <param name="ManifestPath">The <c>cart.json</c>; paths in it are relative to its folder.</param>
public sealed record BuildRequest(string ManifestPath)
{
    /// <summary>What is laid over the manifest.</summary>
    public ManifestOverrides Overrides { get; init; } = ManifestOverrides.None;

    /// <summary>Output folder in place of the manifest's; it may be anywhere.</summary>
    public string? OutputFolder { get; init; }
}
