using System.Collections.Immutable;

namespace Cartwright.Chips;

/// <summary>What a chip says of itself when asked through the Common Flash Interface.</summary>
/// <remarks>Source: JEDEC JESD68.01, Common Flash Interface; codings of some fields from memory.</remarks>
public sealed record CfiQuery
{
    /// <summary>How the bytes lay in the dump, a few words.</summary>
    public required string Spacing { get; init; }

    /// <summary>Id of the command set.</summary>
    public required int CommandSet { get; init; }

    /// <summary>Lowest and highest supply in volts.</summary>
    public required (double Min, double Max) SupplyVolts { get; init; }

    /// <summary>Lowest and highest programming voltage in volts; null when the chip needs none.</summary>
    public required (double Min, double Max)? ProgrammingVolts { get; init; }

    /// <summary>Typical and longest time to program one byte or word, in microseconds; null when not said.</summary>
    public required CfiTime? UnitMicroseconds { get; init; }

    /// <summary>Typical and longest time to program a full buffer, in microseconds; null when there is no buffer.</summary>
    public required CfiTime? BufferMicroseconds { get; init; }

    /// <summary>Typical and longest time to erase a sector, in milliseconds; null when not said.</summary>
    public required CfiTime? SectorMilliseconds { get; init; }

    /// <summary>Typical and longest time to erase the whole chip, in milliseconds; null when not said.</summary>
    public required CfiTime? ChipMilliseconds { get; init; }

    /// <summary>Capacity in bytes.</summary>
    public required long CapacityBytes { get; init; }

    /// <summary>The code for its data lines.</summary>
    public required int Interface { get; init; }

    /// <summary>Bytes of the write buffer; 0 when there is none.</summary>
    public required int BufferBytes { get; init; }

    /// <summary>The sectors from address 0 upward; empty for a chip that is only erased as a whole.</summary>
    public required ImmutableArray<SectorGroup> Map { get; init; }

    /// <summary>Version of the command set's own table, such as <c>1.0</c>; null when the dump does not hold one.</summary>
    public required string? ExtendedVersion { get; init; }

    /// <summary>The end of the small sectors by the table's flag; null when it does not say.</summary>
    public required BootEnd? Boot { get; init; }

    /// <summary>Its data lines; null for widths no cartridge has.</summary>
    public PartDataBus? DataBus => Interface switch
    {
        0 => PartDataBus.Eight,
        1 => PartDataBus.Sixteen,
        2 => PartDataBus.Selectable,
        _ => null,
    };
}
