using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Chips;

/// <summary>Reads the answer to a Common Flash Interface query out of a dump.</summary>
/// <remarks>Source: JEDEC JESD68.01; the order of the regions of top-boot parts: U-Boot, drivers/mtd/cfi_flash.c.</remarks>
public static class CfiReader
{
    private const int Regions = 0x2D;
    private const int RegionLength = 4;

    // Sizes are powers of two; a larger power than this is no size of a memory chip.
    private const int LargestPower = 30;

    // The command sets of AMD and Fujitsu, whose extended tables have a boot flag from version 1.1 on.
    private static readonly int[] WithBootFlag = [2, 4];

    /// <summary>Reads a dump.</summary>
    /// <param name="dump">The raw bytes.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="end">The end of the small sectors, where the user knows it; null otherwise.</param>
    /// <param name="log">Receives what is wrong or doubtful.</param>
    /// <returns>Null when the dump holds no answer that can be believed.</returns>
    public static CfiQuery? Read(ReadOnlyMemory<byte> dump, string name, BootEnd? end, FindingLog log)
    {
        if (CfiDump.Find(dump) is not { } found)
        {
            TellNoQuery(dump, name, log);
            return null;
        }

        if (found.Byte(0x2C) is not { } count || found.Byte(Regions + (count * RegionLength) - 1) is null)
        {
            log.Add(CfiFindings.CutShort, new SourcePlace(name), $"{name} has {ByteSize.Describe(dump.Length)}, and the table of the chip's sectors is not all there.");
            return null;
        }

        var map = MapOf(found, count);
        return IsPlausible(found, map, name, log) ? Query(found, map, name, end, log) : null;
    }

    private static void TellNoQuery(ReadOnlyMemory<byte> dump, string name, FindingLog log)
    {
        var bytes = dump.Span;
        var why = bytes.IsEmpty ? " It is empty."
            : !bytes.ContainsAnyExcept(bytes[0]) ? string.Create(CultureInfo.InvariantCulture, $" Every byte is 0x{bytes[0]:X2}.")
            : !bytes.ContainsAnyExceptInRange((byte)'\t', (byte)'~') ? " It is text; raw bytes are needed."
            : "";
        log.Add(CfiFindings.NoQuery, new SourcePlace(name), $"{name} holds no answer to a query: there are no letters QRY at offset 0x10 of single bytes or words.{why}");
    }

    private static ImmutableArray<SectorGroup> MapOf(CfiDump dump, int count)
    {
        var map = ImmutableArray.CreateBuilder<SectorGroup>(count);
        for (var region = 0; region < count; region++)
        {
            var at = Regions + (region * RegionLength);
            var size = dump.Word(at + 2)!.Value;
            map.Add(new SectorGroup(dump.Word(at)!.Value + 1, size == 0 ? 128 : size * 256));
        }

        return map.MoveToImmutable();
    }

    private static bool IsPlausible(CfiDump dump, ImmutableArray<SectorGroup> map, string name, FindingLog log)
    {
        var power = dump.Byte(0x27)!.Value;
        var total = SectorGroup.TotalOf(map);
        if (power > LargestPower)
        {
            log.Add(CfiFindings.Implausible, new SourcePlace(name), string.Create(CultureInfo.InvariantCulture, $"{name} gives 2 to the power of {power} bytes as the chip's capacity."));
        }
        else if (!map.IsEmpty && total != 1L << power)
        {
            log.Add(CfiFindings.Implausible, new SourcePlace(name),
                $"{name} gives {ByteSize.Describe(1L << power)} as the chip's capacity, and sectors that make {ByteSize.Describe(total)} together.");
        }

        return !log.HasErrors;
    }

    private static CfiQuery Query(CfiDump dump, ImmutableArray<SectorGroup> map, string name, BootEnd? end, FindingLog log)
    {
        var set = dump.Word(0x13)!.Value;
        var extended = dump.Word(0x15)!.Value;
        var hasExtended = extended > 0 && dump.Holds(extended, "PRI") && dump.Byte(extended + 4) is not null;
        var version = hasExtended ? $"{(char)dump.Byte(extended + 3)!}.{(char)dump.Byte(extended + 4)!}" : null;
        var boot = hasExtended && WithBootFlag.Contains(set) && version != "1.0" ? BootOf(dump.Byte(extended + 0x0F)) : null;
        if (CfiWords.CommandSet(set) is null)
        {
            log.Add(CfiFindings.UnknownCommandSet, new SourcePlace(name), $"The chip names a command set {Number.Hex(set, 4)}, which is not known here.");
        }

        var power = dump.Byte(0x2A)!.Value;
        return new CfiQuery
        {
            Spacing = dump.Spacing,
            CommandSet = set,
            SupplyVolts = (Volts(dump, 0x1B), Volts(dump, 0x1C)),
            ProgrammingVolts = dump.Byte(0x1D) == 0 ? null : (Volts(dump, 0x1D), Volts(dump, 0x1E)),
            UnitMicroseconds = Time(dump, 0x1F),
            BufferMicroseconds = Time(dump, 0x20),
            SectorMilliseconds = Time(dump, 0x21),
            ChipMilliseconds = Time(dump, 0x22),
            CapacityBytes = 1L << dump.Byte(0x27)!.Value,
            Interface = dump.Word(0x28)!.Value,
            BufferBytes = power is > 0 and <= LargestPower ? 1 << power : 0,
            Map = InOrder(map, end ?? boot, name, log),
            ExtendedVersion = version,
            Boot = boot,
        };
    }

    private static BootEnd? BootOf(int? flag) => flag switch
    {
        2 => BootEnd.Bottom,
        3 => BootEnd.Top,
        _ => null,
    };

    // Tables of top-boot parts are often given in the order of their bottom-boot sisters.
    private static ImmutableArray<SectorGroup> InOrder(ImmutableArray<SectorGroup> map, BootEnd? end, string name, FindingLog log)
    {
        if (map.Length < 2)
        {
            return map;
        }

        if (end is null)
        {
            log.Add(CfiFindings.EndNotSaid, new SourcePlace(name), $"The table does not say whether the chip is a top-boot or a bottom-boot part; its sectors are given as they stand: {SectorMapText.Format(map)}.");
            return map;
        }

        if (end == BootEnd.Top && map[0].Bytes < map[^1].Bytes)
        {
            var turned = map.Reverse().ToImmutableArray();
            log.Add(CfiFindings.Turned, new SourcePlace(name), $"The chip is a top-boot part, and its table lists the sectors from the other end; turned round they are {SectorMapText.Format(turned)}.");
            return turned;
        }

        return map;
    }

    // Volts in the upper four bits, tenths in the lower.
    private static double Volts(CfiDump dump, int offset)
    {
        var value = dump.Byte(offset)!.Value;
        return (value >> 4) + ((value & 0x0F) / 10.0);
    }

    // Four typical times as powers of two, and four offsets further their longest as powers of two times those. A power of 0 says nothing.
    private static CfiTime? Time(CfiDump dump, int offset)
    {
        var (typical, longest) = (dump.Byte(offset)!.Value, dump.Byte(offset + 4)!.Value);
        return typical is 0 or > LargestPower ? null : new CfiTime(1L << typical, longest is 0 or > LargestPower ? null : 1L << (typical + longest));
    }
}
