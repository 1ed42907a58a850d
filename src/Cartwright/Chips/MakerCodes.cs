using System.Collections.Immutable;
using System.Numerics;

namespace Cartwright.Chips;

/// <summary>The makers of cartridge memories by their codes.</summary>
/// <remarks>Source: JEP106, as the list of OpenOCD, src/helper/jep106.inc, has it; the bytes have odd parity. Exceptions: AT27C800 data sheet
/// for 1E, M27C64A data sheet for 9B.</remarks>
public static class MakerCodes
{
    /// <summary>The byte that stands before the codes of the second bank, twice before those of the third, and so on.</summary>
    public const byte Continuation = 0x7F;

    /// <summary>The codes, those of one byte in order of their banks.</summary>
    public static ImmutableArray<MakerCode> All { get; } =
    [
        new(0x01, 1, "AMD (also Spansion and Cypress parts of the 29 series)"),
        new(0x04, 1, "Fujitsu (now RAMXEED)"),
        new(0x07, 1, "Hitachi"),
        new(0x1C, 1, "Mitsubishi"),
        new(0x1C, 2, "Eon"),
        new(0x1E, 1, "Atmel EPROMs, whose signature is no JEP106 code"),
        new(0x1F, 1, "Atmel flash"),
        new(0x20, 1, "STMicroelectronics (also Numonyx and Micron M29 parts)"),
        new(0x29, 1, "Microchip"),
        new(0x2C, 1, "Micron"),
        new(0x34, 1, "Cypress"),
        new(0x37, 1, "Zarlink; on flash it means AMIC, whose code is in bank 2"),
        new(0x37, 2, "AMIC"),
        new(0x4A, 5, "Excel Semiconductor"),
        new(0x52, 1, "Alliance"),
        new(0x89, 1, "Intel (also Numonyx and Micron 28F parts)"),
        new(0x8F, 1, "National or Fairchild EPROMs"),
        new(0x97, 1, "Texas Instruments"),
        new(0x98, 1, "Toshiba"),
        new(0x9B, 1, "STMicroelectronics, in the signature of the M27C64A alone"),
        new(0x9D, 2, "ISSI (formerly PMC flash)"),
        new(0xAD, 1, "Hyundai or SK Hynix"),
        new(0xB0, 1, "Sharp"),
        new(0xBF, 1, "SST"),
        new(0xC2, 1, "Macronix"),
        new(0xCE, 1, "Samsung"),
        new(0xD5, 1, "ISSI"),
        new(0xDA, 1, "Winbond"),
    ];

    /// <summary>The makers whose chips answer that byte; more than one where the bank is not seen.</summary>
    /// <param name="seen">The byte.</param>
    /// <param name="bank">The bank, where continuation codes came first; 1 where none was seen, as many chips show none.</param>
    public static ImmutableArray<MakerCode> Of(byte seen, int bank) =>
        [.. All.Where(code => code.Seen == seen && (bank == 1 || code.Bank == bank))];

    /// <summary>True when a byte has an odd number of ones, as all codes of JEP106 have.</summary>
    /// <param name="seen">The byte.</param>
    public static bool HasOddParity(byte seen) => int.IsOddInteger(BitOperations.PopCount(seen));
}
