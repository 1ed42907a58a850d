using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>What the manifest's <c>header</c> says.</summary>
/// <param name="Values">Fields by name, letter case ignored.</param>
/// <param name="Keep">Whose bytes win.</param>
public sealed record HeaderSettings(ImmutableSortedDictionary<string, ManifestValue> Values, HeaderKeep Keep)
{
    /// <summary>An empty section.</summary>
    public static HeaderSettings None { get; } = new(
        ImmutableSortedDictionary.Create<string, ManifestValue>(StringComparer.OrdinalIgnoreCase), HeaderKeep.Unsaid);

    /// <summary>The value of a field; null when the manifest does not give it.</summary>
    /// <param name="field">The field's name.</param>
    public ManifestValue? this[string field] => Values.GetValueOrDefault(field);
}
