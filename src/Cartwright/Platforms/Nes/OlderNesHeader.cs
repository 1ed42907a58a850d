using System.Globalization;
using Cartwright.Headers;
using static Cartwright.Platforms.Nes.NesFields;

namespace Cartwright.Platforms.Nes;

/// <summary>The container headers before NES 2.0: iNES as it is written, and what can be trusted of still older or damaged ones.</summary>
public static class OlderNesHeader
{
    private const string Source = "NESdev Wiki, INES";
    private const string NoPlace = "the iNES container has no place for it (NES 2.0, `container: nes2`, has)";

    /// <summary>The iNES container header.</summary>
    public static HeaderTable Table { get; } = new("iNES container header", null, new HeaderAnchor(0), Length,
    [
        MagicRow(Source),
        FormatRow("ines", Source),
        Bits("consoleType", 7, 0, 2, NesNames.OlderConsole, "The kind of console the game is for.", Source) with { Default = "nes" },
        new("mapper", 6, 2, new NumberCodec(new BitsPlacement(new BitSlice(0, 4, 4), new BitSlice(1, 4, 4)), MapperText.Instance), "The bank logic of the board.", Source) { Required = true },
        .. MirroringRows(Source),
        TrainerRow(Source),
        PrgSize,
        ChrSize,
        Battery with { WorkOut = static context => Stated(context, "prgSaveRam") > 0 ? "true" : null, Default = "false" },
        new("prgRamUnits", 8, 1, new NumberCodec(BytesPlacement.Byte, PlainNumber.InDecimal),
            "RAM at $6000 in units of 8 KiB, kept or not as the battery flag says; 0 is read as 8 KiB.", Source) { WorkOut = RamUnits, Default = "0" },
        Bits("timing", 9, 0, 1, NesNames.OlderTiming, "The television system the game is for; few loaders look.", Source) with { Default = "ntsc" },
        Bits("unofficialTiming", 10, 0, 2, PlainNumber.InDecimal, "An unofficial second place for the television system: 0 NTSC, 2 PAL, 1 and 3 both.", Source) with { Default = "0" },
        Bits("noPrgRam", 10, 4, 1, NamedValues.Truth, "Unofficial: there is no RAM at $6000.", Source) with { WorkOut = NoPrgRam, Default = "false" },
        Bits("busConflicts", 10, 5, 1, NamedValues.Truth, "Unofficial: the board has bus conflicts.", Source) with { Default = "false" },
        Reserved("reserved9", 9, Source, new BitSlice(0, 1, 7)),
        Reserved("reserved10", 10, Source, new BitSlice(0, 2, 2), new BitSlice(0, 6, 2)),
        new("reserved11", 11, 5, new BytesCodec(5), "Reserved, and zero.", Source) { Default = "0000000000", Repair = NotZero("0000000000") },
        Derived("submapper", PlainNumber.InDecimal, static _ => 0),
        Derived("prgRam", SizeText.Instance, static header => RamIsKept(header) ? 0 : RamBytes(header)),
        Derived("prgSaveRam", SizeText.Instance, static header => RamIsKept(header) ? RamBytes(header) : 0),
        Derived("chrRam", SizeText.Instance, static header => header[5] == 0 && Mapper(header) != 218 ? (ulong)ChrUnit : 0),
        Derived("chrSaveRam", SizeText.Instance, static _ => 0),
        Derived("vsPpu", NesNames.VsPpu, static _ => 0),
        Derived("vsHardware", NesNames.VsHardware, static _ => 0),
        Derived("extendedConsole", NesNames.ExtendedConsole, static _ => 0),
        Derived("miscellaneousRoms", PlainNumber.InDecimal, static _ => 0),
        Derived("defaultExpansionDevice", NesNames.ExpansionDevice, static _ => 0),
    ]);

    /// <summary>What can be trusted of a header from before iNES was settled, or with text in its last bytes. It is read, and never written.</summary>
    public static HeaderTable Untrusted { get; } = new("archaic iNES container header", null, new HeaderAnchor(0), Length,
    [
        MagicRow(Source),
        Bits("mapper", 6, 4, 4, MapperText.Instance, "The bank logic of the board, as far as it can be trusted.", Source) with { Required = true },
        .. MirroringRows(Source),
        TrainerRow(Source),
        PrgSize,
        ChrSize,
        Battery with { Default = "false" },
        new("tag", 7, 9, new BytesCodec(9), "Whatever somebody put here: mostly their name.", Source) { Default = "000000000000000000" },
    ]);

    private static HeaderField PrgSize => Size("prgSize", 4, PrgUnit, "prg", "Size of PRG.");

    private static HeaderField ChrSize =>
        Size("chrSize", 5, ChrUnit, "chr", "Size of CHR ROM; 0 when there is none, and then 8 KiB of CHR RAM are assumed.");

    private static HeaderField Battery => Bits("battery", 6, 1, 1, NamedValues.Truth, "Whether anything on the cartridge keeps its contents.", Source);

    private static HeaderField Size(string name, int at, long unit, string region, string meaning) =>
        new(name, at, 1, new RomSizeCodec(new BitsPlacement(new BitSlice(0, 0, 8)), unit), meaning, Source) { WorkOut = context => LengthOf(context, region) };

    private static HeaderField Derived(string name, ValueText form, Func<ReadOnlySpan<byte>, ulong> derive) =>
        new(name, 0, Length, new DerivedCodec(form, derive, NoPlace), "Follows from the other fields; this container has no bits of its own for it.", Source);

    // One size serves for both kinds of RAM; 8 KiB is what 0 is read as anyway.
    private static string? RamUnits(HeaderContext context)
    {
        var bytes = Math.Max(Stated(context, "prgSaveRam"), Stated(context, "prgRam"));
        return bytes > ChrUnit && bytes % ChrUnit == 0 ? (bytes / ChrUnit).ToString(CultureInfo.InvariantCulture) : null;
    }

    private static string? NoPrgRam(HeaderContext context) =>
        context["prgRam"] is not null && Stated(context, "prgRam") == 0 && Stated(context, "prgSaveRam") == 0 ? "true" : null;

    // Where the cartridge keeps progress by other means, the battery flag says nothing of the RAM.
    private static bool RamIsKept(ReadOnlySpan<byte> header) => (header[6] & 2) != 0 && NesMappers.Find(Mapper(header), 0)?.KeepsOwnSave != true;

    private static ulong RamBytes(ReadOnlySpan<byte> header) => (header[10] & 0x10) != 0 ? 0 : Math.Max(header[8], (byte)1) * (ulong)ChrUnit;

    private static int Mapper(ReadOnlySpan<byte> header) => (header[6] >> 4) | (header[7] & 0xF0);
}
