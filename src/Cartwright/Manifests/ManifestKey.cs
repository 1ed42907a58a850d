using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>One row of the table of keys a manifest can have.</summary>
/// <param name="Pattern">The key, its parts joined by colons; <c>#</c> stands for a list's items, <c>*</c> for any name.</param>
/// <param name="Kind">What the value looks like.</param>
/// <param name="Meaning">What the key says, one sentence.</param>
/// <param name="Default">What counts when the key is absent; null when nothing does.</param>
public sealed record ManifestKey(string Pattern, ManifestKeyKind Kind, string Meaning, string? Default = null)
{
    /// <summary>The words a <see cref="ManifestKeyKind.Choice"/> can take, the numbers a <see cref="ManifestKeyKind.Number"/> can be, or the words a
    /// <see cref="ManifestKeyKind.Size"/> can have in a number's place; empty where there are none.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>True when the key must be there.</summary>
    public bool Required { get; init; }
}
