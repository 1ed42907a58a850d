using System.Collections.Immutable;
using Cartwright.Chips;

namespace Cartwright.Plans;

/// <summary>The chip a plan is for: the part, its sectors and how many of its data lines are in use.</summary>
/// <param name="Part">The part.</param>
/// <param name="Map">Its sectors from address 0 upward, or the pages of a part that has any; empty when it is overwritten unit by unit.</param>
/// <param name="Width">Data lines in use: 8 or 16. It decides what one programming step writes.</param>
/// <param name="Method">How it is rewritten.</param>
public sealed record WriteTarget(Part Part, ImmutableArray<SectorGroup> Map, int Width, WriteMethod Method)
{
    /// <summary>Bytes that one programming step writes: 1 or 2.</summary>
    public int UnitBytes => Width / 8;

    /// <summary>The chip for a part; its map is empty where sectors are needed and not known.</summary>
    /// <param name="part">The part.</param>
    /// <param name="map">Its sectors, as <see cref="PartVariant.MapOf"/> gives them or the user does.</param>
    /// <param name="width">Data lines in use: 8 or 16.</param>
    public static WriteTarget Of(Part part, ImmutableArray<SectorGroup> map, int width)
    {
        var method = MethodOf(part, map);
        return new WriteTarget(part, method switch
        {
            WriteMethod.Ultraviolet or WriteMethod.Once => [new SectorGroup(1, (int)part.CapacityBytes)],
            WriteMethod.InPlace => Pages(part),
            _ => map,
        }, width, method);
    }

    /// <summary>How a part is rewritten.</summary>
    /// <param name="part">The part.</param>
    /// <param name="map">Its sectors; empty when it has none, or they are not known.</param>
    public static WriteMethod MethodOf(Part part, ImmutableArray<SectorGroup> map) => part switch
    {
        { Kind: PartKind.UvEprom } => WriteMethod.Ultraviolet,
        { Kind: PartKind.Otp } => WriteMethod.Once,
        { Sectors.IsPageWrite: true } => WriteMethod.Pages,
        { Kind: PartKind.NorFlash } or { Kind: PartKind.Eeprom, Sectors.Map.IsEmpty: false } => map is [{ Count: 1 }] ? WriteMethod.WholeChip : WriteMethod.Sectors,
        _ => WriteMethod.InPlace,
    };

    private static ImmutableArray<SectorGroup> Pages(Part part)
    {
        var page = WriteFigures.BurstOf(part.Programming.Granularity);
        var capacity = (int)part.CapacityBytes;
        return page > 0 && capacity % page == 0 ? [new SectorGroup(capacity / page, page)] : [new SectorGroup(1, capacity)];
    }
}
