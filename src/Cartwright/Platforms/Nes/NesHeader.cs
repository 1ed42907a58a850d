using Cartwright.Headers;
using static Cartwright.Platforms.Nes.NesFields;

namespace Cartwright.Platforms.Nes;

/// <summary>The NES 2.0 container header, 16 bytes before PRG and CHR in the exchange file and on no chip.</summary>
public static class NesHeader
{
    private const string Source = "NESdev Wiki, NES 2.0";

    /// <summary>The table.</summary>
    public static HeaderTable Table { get; } = new("NES 2.0 container header", null, new HeaderAnchor(0), Length,
    [
        MagicRow(Source),
        FormatRow("nes2", Source),
        Bits("consoleType", 7, 0, 2, NesNames.Console, "The kind of console the game is for.", Source) with { Default = "nes" },
        Bits("submapper", 8, 4, 4, PlainNumber.InDecimal, "The variant of the mapper.", "NESdev Wiki, NES 2.0 submappers") with { WorkOut = Submapper, Default = "0" },
        new("mapper", 6, 3, new NumberCodec(new BitsPlacement(new BitSlice(0, 4, 4), new BitSlice(1, 4, 4), new BitSlice(2, 0, 4)), MapperText.Instance),
            "The bank logic of the board.", Source) { Required = true },
        .. MirroringRows(Source),
        TrainerRow(Source),
        new("prgSize", 4, 6, new RomSizeCodec(new BitsPlacement(new BitSlice(0, 0, 8), new BitSlice(5, 0, 4)), PrgUnit),
            "Size of PRG.", Source) { WorkOut = static context => LengthOf(context, "prg") },
        new("chrSize", 5, 5, new RomSizeCodec(new BitsPlacement(new BitSlice(0, 0, 8), new BitSlice(4, 4, 4)), ChrUnit),
            "Size of CHR ROM; 0 when there is none.", Source) { WorkOut = static context => LengthOf(context, "chr") },
        Ram("prgRam", 10, 0, "RAM at $6000 that forgets."),
        Ram("prgSaveRam", 10, 4, "RAM or EEPROM on the CPU's side that keeps its contents. PRG that the console rewrites does not count."),
        Ram("chrSaveRam", 11, 4, "CHR RAM that keeps its contents."),
        Ram("chrRam", 11, 0, "CHR RAM that forgets. It must be declared: nothing is assumed. RAM for nametables does not count.") with { WorkOut = ChrRam },
        Bits("battery", 6, 1, 1, NamedValues.Truth, "Whether anything on the cartridge keeps its contents.", Source) with { WorkOut = Battery, Default = "false" },
        Bits("timing", 12, 0, 2, NesNames.Timing, "The television system the game is for.", Source) with { Default = "ntsc" },
        Bits("vsPpu", 13, 0, 4, NesNames.VsPpu, "The picture chip of the Vs. System.", Source) with { When = static context => IsConsole(context, 1), Default = "rp2c03" },
        Bits("vsHardware", 13, 4, 4, NesNames.VsHardware, "The kind of Vs. System.", Source) with { When = static context => IsConsole(context, 1), Default = "unisystem" },
        Bits("extendedConsole", 13, 0, 4, NesNames.ExtendedConsole, "The console when it is none of the others.", Source) with { When = static context => IsConsole(context, 3), Required = true },
        Bits("miscellaneousRoms", 14, 0, 2, PlainNumber.InDecimal, "How many more ROMs follow PRG and CHR.", Source) with { Default = "0" },
        Bits("defaultExpansionDevice", 15, 0, 7, NesNames.ExpansionDevice,
            "What is plugged in. At least one old loader refuses any value but unspecified.", Source) with { Default = "unspecified" },
        Reserved("reserved12", 12, Source, new BitSlice(0, 2, 6)),
        Reserved("reserved13", 13, Source, new BitSlice(0, 0, 8)) with { When = static context => !IsConsole(context, 1) && !IsConsole(context, 3) },
        Reserved("reserved13High", 13, Source, new BitSlice(0, 4, 4)) with { When = static context => IsConsole(context, 3) },
        Reserved("reserved14", 14, Source, new BitSlice(0, 2, 6)),
        Reserved("reserved15", 15, Source, new BitSlice(0, 7, 1)),
    ]);

    private static HeaderField Ram(string name, int at, int low, string meaning) =>
        Bits(name, at, low, 4, NesNames.RamSize, meaning, Source) with { Default = "0" };

    // Save RAM needs the flag; without save RAM it is the maker's word that the cartridge keeps something.
    private static string? Battery(HeaderContext context) => IsNone(context["prgSaveRam"]) && IsNone(context["chrSaveRam"]) ? null : "true";

    private static bool IsNone(string? text) => text is null || (NesNames.RamSize.TryParse(text, out var code) && code == 0);

    private static bool IsConsole(HeaderContext context, ulong kind) =>
        context["consoleType"] is { } text && NesNames.Console.TryParse(text, out var value) && value == kind;
}
