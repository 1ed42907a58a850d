using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>Whose bytes win where the program already holds something in the header area.</summary>
/// <param name="All">True: the program's; false: the manifest's; null: not said, so a difference is an error.</param>
/// <param name="Fields">Names of fields of which the program's bytes win in any case, checksums among them.</param>
public sealed record HeaderKeep(bool? All, ImmutableArray<ManifestValue> Fields)
{
    /// <summary>Nothing said.</summary>
    public static HeaderKeep Unsaid { get; } = new(null, []);

    /// <summary>True when the field is named in the list.</summary>
    /// <param name="field">The field's name.</param>
    public bool Names(string field) => Fields.Any(value => string.Equals(value.Text, field, StringComparison.OrdinalIgnoreCase));
}
