using System.Buffers.Binary;
using Cartwright.Findings;
using Cartwright.Roms;

namespace Cartwright.Platforms.Msx;

/// <summary>Looks at a program's code for what it expects of its board.</summary>
internal static class MapperChecks
{
    private const byte StoreA = 0x32;
    private const int Enough = 4;

    public static void Check(CartView cart, RegionImage region, MsxMapping mapping, FindingLog log)
    {
        var rom = region.Bytes.Span;
        if (mapping.BankSize == 0)
        {
            if (rom.Length > MsxMapping.PageSize && !SelectsSlots(rom))
            {
                log.Add(MsxFindings.OtherHalf, cart.Place("header:mapping"), "The ROM has more than one page, and no instruction for the slot register is found in it.");
            }
        }
        else if (!mapping.Registers.IsEmpty
            && MsxMapping.All.Where(static other => !other.Registers.IsEmpty).MaxBy(other => Stores(region.Bytes.Span, other)) is { } likely
            && Stores(rom, likely) is var count && count >= Enough
            // Some registers are common to two mappers.
            && Stores(rom, mapping) is var own && own < count / 2)
        {
            log.Add(MsxFindings.OtherMapper, cart.Place("header:mapping"), $"The programs store to the registers of {likely.Name} {count} times, and to those of {mapping.Name} {own} times.");
        }
    }

    // A call or jump to ENASLT of the BIOS, or an output to the slot register.
    private static bool SelectsSlots(ReadOnlySpan<byte> rom) =>
        rom.IndexOf((ReadOnlySpan<byte>)[0xCD, 0x24, 0x00]) >= 0 || rom.IndexOf((ReadOnlySpan<byte>)[0xC3, 0x24, 0x00]) >= 0 || rom.IndexOf((ReadOnlySpan<byte>)[0xD3, 0xA8]) >= 0;

    private static int Stores(ReadOnlySpan<byte> rom, MsxMapping mapping)
    {
        var count = 0;
        for (var at = rom.IndexOf(StoreA); at >= 0 && rom.Length >= at + 3;)
        {
            count += mapping.Registers.Contains(BinaryPrimitives.ReadUInt16LittleEndian(rom[(at + 1)..])) ? 1 : 0;
            rom = rom[(at + 1)..];
            at = rom.IndexOf(StoreA);
        }

        return count;
    }
}
