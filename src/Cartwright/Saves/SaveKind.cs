using System.Collections.Immutable;

namespace Cartwright.Saves;

/// <summary>One kind of save memory that cartridges of a platform have.</summary>
/// <param name="Id">Its word, of its own within the platform: <c>sram-odd</c>.</param>
/// <param name="Platforms">Ids of the platforms.</param>
/// <param name="Memory">What it is.</param>
/// <param name="Lanes">How its bytes meet the bus.</param>
/// <param name="Sizes">Customary sizes of the memory in bytes, the smallest first.</param>
public sealed record SaveKind(string Id, ImmutableArray<string> Platforms, SaveMemory Memory, SaveLanes Lanes, ImmutableArray<int> Sizes)
{
    /// <summary>The order of bytes on the chip.</summary>
    public required string OnChip { get; init; }

    /// <summary>The order in which the console sees them.</summary>
    public required string OnConsole { get; init; }

    /// <summary>The order exchanged files commonly have.</summary>
    public required string InFiles { get; init; }

    /// <summary>Names of the layouts its files are met in, the commonest first; each may have a clock behind it where <see cref="HasClock"/> says so.</summary>
    public required ImmutableArray<string> Layouts { get; init; }

    /// <summary>True where files may end in the record of a real-time clock.</summary>
    public bool HasClock { get; init; }

    /// <summary>Title of the source.</summary>
    public required string Source { get; init; }

    /// <summary>True where all or part of the row is from memory.</summary>
    public bool FromMemory { get; init; }

    /// <summary>True for memory of this size.</summary>
    /// <param name="size">The size in bytes.</param>
    public bool HasSize(long size) => Sizes.Any(known => known == size);
}
