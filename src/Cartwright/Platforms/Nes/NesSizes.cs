using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nes;

/// <summary>The sizes PRG and CHR can have, by mapper and container.</summary>
internal static class NesSizes
{
    // Nothing larger is ever held in memory at once.
    private const long Unlimited = 1L << 30;
    private const long OlderUnits = 0xFF;

    /// <summary>The regions of a cart.</summary>
    /// <param name="mapper">The mapper's row; null when the table has none.</param>
    /// <param name="older">True for the iNES container.</param>
    public static ImmutableArray<RegionRule> Regions(NesMapper? mapper, bool older) =>
    [
        new("prg", Prg(mapper, older), "program, on the CPU's bus"),
        new("chr", Chr(mapper, older), "picture patterns, on the PPU's bus") { Required = false },
    ];

    private static SizeRule Prg(NesMapper? mapper, bool older)
    {
        var most = older ? OlderUnits * NesFields.PrgUnit : Unlimited;
        return mapper is null
            ? Any(NesFields.PrgUnit, most, older)
            : Rule(Math.Max(NesFields.PrgUnit, mapper.PrgBank), Math.Min(most, mapper.PrgLargest),
                older || mapper.PrgBank == 0 ? Math.Max(NesFields.PrgUnit, mapper.PrgBank) : mapper.PrgBank, mapper);
    }

    private static SizeRule Chr(NesMapper? mapper, bool older)
    {
        var most = older ? OlderUnits * NesFields.ChrUnit : Unlimited;
        return mapper is null
            ? Any(NesFields.ChrUnit, most, older)
            : Rule(NesFields.ChrUnit, Math.Min(most, Math.Max(NesFields.ChrUnit, mapper.ChrMax)), NesFields.ChrUnit, mapper);
    }

    private static SizeRule Any(long unit, long most, bool older) => older
        ? new SizeRule(Doubling(unit, most), unit, $"a multiple of {ByteSize.Words(unit)} up to {ByteSize.Words(most)}")
        : new SizeRule(Doubling(unit, most), 1, $"a multiple of {ByteSize.Words(unit)}, or 1, 3, 5 or 7 times a power of two") { Smallest = 1 };

    private static SizeRule Rule(long smallest, long largest, long step, NesMapper mapper) => new(Doubling(smallest, largest), step, smallest == largest
        ? $"exactly {ByteSize.Words(smallest)} with the mapper {mapper.Name}"
        : $"a multiple of {ByteSize.Words(step)} from {ByteSize.Words(smallest)} to {ByteSize.Words(largest)} with the mapper {mapper.Name}");

    // Powers of two, and the largest size besides where it is none.
    private static ImmutableArray<long> Doubling(long smallest, long largest)
    {
        var sizes = ImmutableArray.CreateBuilder<long>();
        for (var size = smallest; size < largest; size *= 2)
        {
            sizes.Add(size);
        }

        sizes.Add(largest);
        return sizes.ToImmutable();
    }
}
