using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>A value of the manifest and where it stands.</summary>
/// <param name="Text">The value as text, never null.</param>
/// <param name="Place">File, line, column and key; for an override, the place names the variable or option.</param>
public sealed record ManifestValue(string Text, SourcePlace Place)
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}
