using System.Collections.Immutable;
using static Cartwright.Platforms.Nes.BusConflicts;
using static Cartwright.Platforms.Nes.ChrKind;
using static Cartwright.Platforms.Nes.NesReset;

namespace Cartwright.Platforms.Nes;

/// <summary>The mappers that are known. Source: NESdev Wiki, List of mappers and Comparison of Nintendo mappers; power-on states also from the pages of the single mappers.</summary>
public static class NesMappers
{
    private const int K = 1 << 10;
    private const int M = 1 << 20;
    private static readonly NesMapper Mmc1 = Row(1, "mmc1", "MMC1 SxROM", 256, "16+16F, 16F+16 or 32", 16, new NesReset(16 * K, Advised: 32 * K), RomOrRam, 128, "4+4 or 8") with { PrgExtended = 512 * K };
    private static readonly NesMapper DxRom = Row(206, "dxrom", "DxROM / N108", 128, "8+8+16F", 8, Last(16), Rom, 64, "2+2+1+1+1+1") with { FixedTop = 16 * K };

    // Which of the two boards of number 34 is meant is told by the submapper, or by the CHR.
    private static readonly NesMapper Either34 = Row(34, "bnrom-nina-001", "BNROM or NINA-001", 256, "32", 32, Every(32), RomOrRam, 64, "8, or 4+4") with { PrgExtended = 8 * M };

    /// <summary>All rows, in order of number; a row for one submapper comes after the number's general row.</summary>
    public static ImmutableArray<NesMapper> All { get; } =
    [
        Row(0, "nrom", "NROM", 32, "none; 16 KiB is seen twice", 0, End, RomOrRam, 8, "none"),
        Mmc1,
        Mmc1 with { Submapper = 5, PrgMax = 32 * K, PrgExtended = 0, PrgBanking = "none", PrgBank = 0, Reset = End },
        Row(2, "uxrom", "UxROM", 256, "16+16F", 16, Last(16), Ram, 8, "none") with { FixedTop = 16 * K, PrgExtended = 4 * M, Conflicts = Always },
        Row(3, "cnrom", "CNROM", 32, "none", 0, End, Rom, 32, "8") with { Conflicts = Always },
        Mmc3(4, "mmc3", "MMC3 TxROM", 512, RomOrRam, 256, "2+2+1+1+1+1"),
        Row(5, "mmc5", "MMC5 ExROM", 1024, "32, 16+16, 16+8+8 or 8+8+8+8", 8, Last(8), Rom, 1024, "8, 4, 2 or 1"),
        Row(7, "axrom", "AxROM", 256, "32", 32, Every(32), Ram, 8, "none") with { PrgExtended = 512 * K, Conflicts = SomeBoards },
        Row(9, "mmc2", "MMC2", 128, "8+24F", 8, Last(24), Rom, 128, "4/4+4/4 by latch") with { FixedTop = 24 * K },
        Row(10, "mmc4", "MMC4", 256, "16+16F", 16, Last(16), Rom, 128, "4/4+4/4 by latch") with { FixedTop = 16 * K },
        Row(11, "single-latch", "single-latch 32 KiB / 8 KiB board", 128, "32", 32, Every(32), Rom, 128, "8") with { Conflicts = Always },
        Row(13, "cprom", "CPROM", 32, "none", 0, End, Ram, 16, "4F+4") with { ChrRam = 16 * K, Conflicts = Always },
        Row(28, "multicart-cpld", "multicart CPLD board", 8192, "32, 16F+16 or 16+16F, with an outer bank", 16, Last(16), Ram, 32, "8"),
        Row(29, "ret-cufrom", "RET-CUFROM", 128, "16+16F", 16, Last(16), Ram, 32, "8") with { FixedTop = 16 * K },
        Row(30, "unrom-512", "UNROM 512", 512, "16+16F", 16, Last(16), Ram, 32, "8") with { FixedTop = 16 * K, Conflicts = UnlessSelfFlash, KeepsOwnSave = true },
        Row(31, "nsf-style", "NSF-style board", 1024, "eight of 4", 4, Last(4), RomOrRam, 8, "none"),
        Either34,
        Either34 with { Submapper = 1, Name = "nina-001", Board = "NINA-001", PrgMax = 64 * K, PrgExtended = 0, Chr = Rom, ChrBanking = "4+4" },
        Either34 with { Submapper = 2, Name = "bnrom", Board = "BNROM", Chr = Ram, ChrMax = 8 * K, ChrBanking = "none", Conflicts = Always },
        Row(66, "gxrom", "GxROM", 128, "32", 32, Every(32), Rom, 32, "8") with { Conflicts = Always },
        Row(68, "sunsoft-4", "Sunsoft-4", 256, "16+16F", 16, Last(16), Rom, 256, "2+2+2+2, and nametables in ROM") with { FixedTop = 16 * K },
        Row(69, "fme-7", "FME-7 / 5A / 5B", 512, "8+8+8+8F", 8, Last(8), Rom, 256, "eight of 1") with { FixedTop = 8 * K },
        Row(71, "unrom-clone", "UNROM clone", 256, "16+16F", 16, Last(16), Ram, 8, "none") with { FixedTop = 16 * K },
        Row(79, "nina-003-006", "NINA-003 / NINA-006", 64, "32", 32, Every(32), Rom, 64, "8"),
        Row(85, "vrc7", "VRC7", 512, "8+8+8+8F", 8, Last(8), RomOrRam, 256, "eight of 1") with { FixedTop = 8 * K },
        Row(87, "low-latch", "latch in the $6000 area", 32, "none", 0, End, Rom, 32, "8"),
        Row(94, "un1rom", "UN1ROM", 256, "16+16F", 16, Last(16), Ram, 8, "none") with { FixedTop = 16 * K, Conflicts = Always },
        Row(111, "gtrom", "GTROM", 512, "32", 32, Every(32), Ram, 16, "8") with { ChrRam = 16 * K, KeepsOwnSave = true },
        Mmc3(118, "txsrom", "TxSROM", 512, Rom, 128, "2+2+1+1+1+1"),
        Mmc3(119, "tqrom", "TQROM", 128, RomAndRam, 64, "2+2+1+1+1+1"),
        Row(180, "inverted-unrom", "inverted UNROM", 256, "16F+16", 16, Every(16), Ram, 8, "none") with { FixedFirst = true, Conflicts = Always },
        Row(185, "cnrom-diodes", "CNROM with diodes", 32, "none", 0, End, Rom, 8, "none") with { Conflicts = Always },
        DxRom,
        DxRom with { Submapper = 1, PrgMax = 32 * K, PrgBanking = "none", PrgBank = 0, FixedTop = 0, Reset = End },
        Row(218, "one-chip", "one-chip board", 32, "none", 0, End, ChrKind.None, 0, "none"),
    ];

    /// <summary>The row for a mapper; null when the table has none.</summary>
    /// <param name="number">The mapper number.</param>
    /// <param name="submapper">The submapper, 0 when none is stated.</param>
    /// <param name="chr">Bytes of CHR ROM; null when not known yet.</param>
    public static NesMapper? Find(int number, int submapper, long? chr = null)
    {
        if (number == 34 && submapper == 0 && chr is { } bytes)
        {
            submapper = bytes > 8 * K ? 1 : bytes == 0 ? 2 : 0;
        }

        return All.FirstOrDefault(row => row.Number == number && row.Submapper == submapper)
            ?? All.FirstOrDefault(row => row.Number == number && row.Submapper is null);
    }

    /// <summary>The row a name means; null when it is no name of a mapper.</summary>
    /// <param name="name">The name, letter case ignored.</param>
    public static NesMapper? Named(string name) =>
        All.FirstOrDefault(row => string.Equals(row.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    private static NesMapper Mmc3(int number, string name, string board, int prg, ChrKind kind, int chr, string chrBanking) =>
        Row(number, name, board, prg, "8+8+16F or 8F+8+8+8F", 8, Last(8), kind, chr, chrBanking) with { FixedTop = 8 * K };

    private static NesMapper Row(int number, string name, string board, int prg, string banking, int bank, NesReset reset, ChrKind kind, int chr, string chrBanking) =>
        new(number, name, board, prg * K, banking, bank * K, reset, kind, chr * K, chrBanking);
}
