using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>What the manifest says of one region.</summary>
/// <param name="Name">The region.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Size">Its size in bytes; null for the smallest legal one.</param>
/// <param name="SizePlace">Where the size stands.</param>
/// <param name="Fill">Value of bytes no program covers; null for the platform's own.</param>
public sealed record RegionSettings(string Name, SourcePlace Place, long? Size, SourcePlace SizePlace, byte? Fill);
