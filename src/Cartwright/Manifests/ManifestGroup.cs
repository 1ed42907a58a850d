namespace Cartwright.Manifests;

/// <summary>A section of the manifest: keys that belong together.</summary>
/// <param name="Pattern">The section's own key, written as in <see cref="ManifestKey.Pattern"/>.</param>
/// <param name="Meaning">What the section says, one sentence.</param>
public sealed record ManifestGroup(string Pattern, string Meaning)
{
    /// <summary>The keys whose nearest section this is.</summary>
    public IEnumerable<ManifestKey> Keys => ManifestKeys.Rows.Where(row => ManifestKeys.GroupOf(row) == this);
}
