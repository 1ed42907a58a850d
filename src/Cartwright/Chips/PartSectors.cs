using System.Collections.Immutable;

namespace Cartwright.Chips;

/// <summary>What a part erases at once.</summary>
public sealed record PartSectors
{
    /// <summary>The layout in words.</summary>
    public required string Layout { get; init; }

    /// <summary>The sectors from address 0 upward; empty when unknown or when nothing is erased.</summary>
    /// <remarks>For families with a top and a bottom variant this is the bottom-boot order (reverse the groups for the top one);
    /// for a row of several variants it describes the first.</remarks>
    public required ImmutableArray<SectorGroup> Map { get; init; }

    /// <summary>True when writing a page erases it too, so that bytes left out of the write are lost.</summary>
    public required bool IsPageWrite { get; init; }

    /// <summary>Typical time to erase one sector, in milliseconds with remarks; blank when unknown.</summary>
    public required string TypicalSectorEraseMilliseconds { get; init; }

    /// <summary>Typical time to erase the whole chip, in milliseconds with remarks; blank when unknown.</summary>
    public required string TypicalChipEraseMilliseconds { get; init; }
}
