using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>What is laid over the manifest file: environment variables first, single settings last.</summary>
/// <param name="Environment">Variables by name; only those that begin with <see cref="ManifestDocument.EnvironmentPrefix"/> count.</param>
/// <param name="Settings">Values by key, the parts of the key joined by colons: <c>cart:revision</c>.</param>
public sealed record ManifestOverrides(
    ImmutableSortedDictionary<string, string> Environment,
    ImmutableSortedDictionary<string, string> Settings)
{
    /// <summary>Everything laid over, by key: where a variable and a setting name the same key, the setting.</summary>
    public ImmutableSortedDictionary<string, string> Merged
    {
        get
        {
            var merged = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.OrdinalIgnoreCase);
            foreach (var (name, value) in Environment)
            {
                if (KeyOf(name) is { } key)
                {
                    merged[key] = value;
                }
            }

            foreach (var (key, value) in Settings)
            {
                merged[key] = value;
            }

            return merged.ToImmutable();
        }
    }

    /// <summary>The key a variable overrides: <c>cart:revision</c> for <c>CARTWRIGHT__cart__revision</c>; null for a variable of another kind.</summary>
    internal static string? KeyOf(string variable) =>
        variable.StartsWith(ManifestDocument.EnvironmentPrefix, StringComparison.OrdinalIgnoreCase)
            ? variable[ManifestDocument.EnvironmentPrefix.Length..].Replace("__", ":", StringComparison.Ordinal)
            : null;

    /// <summary>Nothing is laid over.</summary>
    public static ManifestOverrides None { get; } = new(ImmutableSortedDictionary<string, string>.Empty, ImmutableSortedDictionary<string, string>.Empty);
}
