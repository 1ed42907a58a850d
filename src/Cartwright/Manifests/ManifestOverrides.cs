using System.Collections;
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
    public static ManifestOverrides None { get; } = new(
        ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal), ImmutableSortedDictionary.Create<string, string>(StringComparer.OrdinalIgnoreCase));

    /// <summary>What a program's surroundings lay over a manifest.</summary>
    /// <param name="variables">Environment variables, as the runtime gives them; only those that begin with <see cref="ManifestDocument.EnvironmentPrefix"/> are kept.</param>
    /// <param name="settings">Values by key; of two for one key the last counts.</param>
    public static ManifestOverrides Of(IDictionary variables, IEnumerable<KeyValuePair<string, string>> settings)
    {
        var environment = None.Environment.ToBuilder();
        foreach (DictionaryEntry variable in variables)
        {
            if (variable is { Key: string name, Value: string value } && KeyOf(name) is not null)
            {
                environment[name] = value;
            }
        }

        var values = None.Settings.ToBuilder();
        foreach (var (key, value) in settings)
        {
            values[key] = value;
        }

        return new ManifestOverrides(environment.ToImmutable(), values.ToImmutable());
    }

    /// <summary>Reads a setting as it is written in one word: <c>cart:revision=2</c>.</summary>
    /// <param name="word">The word.</param>
    /// <returns>Its key and value; null when it is not of that form.</returns>
    public static KeyValuePair<string, string>? Setting(string word) =>
        word.IndexOf('=', StringComparison.Ordinal) is > 0 and var equals ? new(word[..equals].Trim(), word[(equals + 1)..]) : null;

    /// <summary>The values that count, by key, letter case ignored: a setting goes before a variable.</summary>
    public ImmutableSortedDictionary<string, string> ByKey
    {
        get
        {
            var values = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.OrdinalIgnoreCase);
            foreach (var (name, value) in Environment)
            {
                if (KeyOf(name) is { } key)
                {
                    values[key] = value;
                }
            }

            foreach (var (key, value) in Settings)
            {
                values[key] = value;
            }

            return values.ToImmutable();
        }
    }

    /// <summary>The key a variable overrides; null when its name says it is none of ours.</summary>
    /// <param name="variable">The variable's name.</param>
    internal static string? KeyOf(string variable) => variable.StartsWith(ManifestDocument.EnvironmentPrefix, StringComparison.OrdinalIgnoreCase)
        ? variable[ManifestDocument.EnvironmentPrefix.Length..].Replace("__", ":", StringComparison.Ordinal)
        : null;
}
