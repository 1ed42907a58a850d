using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>A finished game of a multi-game image.</summary>
/// <param name="File">Its image as written, relative to the manifest.</param>
/// <param name="Title">What it is called in the directory and in tables.</param>
/// <param name="Place">Where the item stands.</param>
public sealed record SlotGame(ManifestValue File, string Title, SourcePlace Place)
{
    /// <summary>Bytes of its slot, a power of two; null for the smallest that holds it.</summary>
    public long? Size { get; init; }

    /// <summary>Where in its region the slot begins; null for the lowest free place.</summary>
    public long? At { get; init; }

    /// <summary>Numbers the directory may hold, by name.</summary>
    public ImmutableSortedDictionary<string, long> Values { get; init; } = ImmutableSortedDictionary.Create<string, long>(StringComparer.OrdinalIgnoreCase);
}
