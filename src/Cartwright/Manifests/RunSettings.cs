using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>What the manifest's <c>run</c> says of a production run.</summary>
/// <param name="Fields">The fields that differ from unit to unit.</param>
/// <param name="Label">The text of a unit's label, with names of fields in braces; null when not said.</param>
/// <param name="BoardRevision">The revision of the circuit board; null when not said.</param>
public sealed record RunSettings(ImmutableArray<UnitField> Fields, ManifestValue? Label, ManifestValue? BoardRevision);
