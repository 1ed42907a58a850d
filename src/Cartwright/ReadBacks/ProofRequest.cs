using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>An expected chip image, its read-backs, and what is known around them.</summary>
/// <param name="Expected">The bytes the chip should hold.</param>
/// <param name="Shape">Width of the chip and order of the bytes of a word in the files.</param>
/// <param name="Reads">The read-backs, at least one, in the order they were made.</param>
public sealed record ProofRequest(byte[] Expected, WordShape Shape, ImmutableArray<ReadBack> Reads)
{
    /// <summary>How the chip was written.</summary>
    public WritingWorld World { get; init; }

    /// <summary>What the chip held before; null when not known.</summary>
    public byte[]? OldContent { get; init; }

    /// <summary>Images of the build's other sites.</summary>
    public ImmutableArray<NamedImage> OtherSites { get; init; } = [];

    /// <summary>Images of other releases.</summary>
    public ImmutableArray<NamedImage> Releases { get; init; } = [];

    /// <summary>Images of other chips on the bus.</summary>
    public ImmutableArray<NamedImage> OtherChips { get; init; } = [];
}
