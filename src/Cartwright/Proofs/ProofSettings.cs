using System.Collections.Immutable;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>What is known around a proof, whichever chip it is of.</summary>
public sealed record ProofSettings
{
    /// <summary>Nothing but the images.</summary>
    public static ProofSettings None { get; } = new();

    /// <summary>How the chip was written.</summary>
    public WritingWorld World { get; init; }

    /// <summary>What the chip held before; null when not known.</summary>
    public byte[]? OldContent { get; init; }

    /// <summary>Images of other releases.</summary>
    public ImmutableArray<NamedImage> Releases { get; init; } = [];

    /// <summary>Images of other chips on the bus.</summary>
    public ImmutableArray<NamedImage> OtherChips { get; init; } = [];
}
