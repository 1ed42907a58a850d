namespace Cartwright.Manifests;

/// <summary>What the manifest's <c>cart</c> says.</summary>
/// <param name="Name">Stem of every output file.</param>
/// <param name="Platform">The platform's id as written.</param>
/// <param name="Title">The game's title; null when absent.</param>
/// <param name="Revision">The game's revision; null when absent.</param>
public sealed record CartIdentity(ManifestValue Name, ManifestValue Platform, ManifestValue? Title, ManifestValue? Revision);
