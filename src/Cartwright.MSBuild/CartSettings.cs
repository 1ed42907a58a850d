using Cartwright.Manifests;

namespace Cartwright.MSBuild;

/// <summary>The `Settings` metadata of a cart.</summary>
internal static class CartSettings
{
    /// <summary>Splits the text into words of the form key=value; blank ones do not count.</summary>
    public static string[] Words(string? text) => (text ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>What the words and the build's environment lay over the manifest.</summary>
    public static ManifestOverrides Overrides(string[] words) =>
        ManifestOverrides.Of(Environment.GetEnvironmentVariables(), words.Select(ManifestOverrides.Setting).OfType<KeyValuePair<string, string>>());
}
