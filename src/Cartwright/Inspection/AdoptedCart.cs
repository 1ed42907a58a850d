using System.Collections.Immutable;
using Cartwright.Manifests;

namespace Cartwright.Inspection;

/// <summary>What builds an existing image again.</summary>
/// <param name="Programs">The bytes of each region, without what the header's rows write.</param>
/// <param name="Header">The header's values that a build does not find by itself, options among them.</param>
/// <param name="Kept">Fields and checksums that no value expresses: their bytes stay in the programs, and win.</param>
public sealed record AdoptedCart(ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Programs, ImmutableSortedDictionary<string, ManifestValue> Header, ImmutableSortedSet<string> Kept)
{
    /// <summary>Bytes of the image where it ends before a ROM of legal size does; null where it is a whole one.</summary>
    public int? RomLength { get; init; }
}
