using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>What is laid over the manifest file: environment variables first, single settings last.</summary>
/// <param name="Environment">Variables by name; only those that begin with <see cref="ManifestDocument.EnvironmentPrefix"/> count.</param>
/// <param name="Settings">Values by key, the parts of the key joined by colons: <c>cart:revision</c>.</param>
public sealed record ManifestOverrides(
    ImmutableSortedDictionary<string, string> Environment,
    ImmutableSortedDictionary<string, string> Settings)
{
    /// <summary>Nothing is laid over.</summary>
    public static ManifestOverrides None { get; } = new(ImmutableSortedDictionary<string, string>.Empty, ImmutableSortedDictionary<string, string>.Empty);
}
