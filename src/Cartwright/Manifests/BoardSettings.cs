using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>What the manifest's <c>board</c> says.</summary>
/// <param name="Use">A board of the catalogue; null when the board is described in place, or there is none.</param>
/// <param name="Section">The whole section, for a board described in place.</param>
/// <param name="Chips">The chips by site, letter case ignored.</param>
public sealed record BoardSettings(ManifestValue? Use, ManifestSection Section, ImmutableSortedDictionary<string, ChipSettings> Chips);
