using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Programs;

public static partial class ProgramFindings
{
    /// <summary>Not an ELF file.</summary>
    public static FindingRule ElfMagic { get; } = new(
        "CW2050",
        FindingSeverity.Error,
        "Not an ELF file",
        "The name or the manifest says ELF, the first bytes do not.",
        "Check that the path names the linked program, or correct its format.");

    /// <summary>ELF file cut short.</summary>
    public static FindingRule ElfTruncated { get; } = new(
        "CW2051",
        FindingSeverity.Error,
        "ELF file cut short",
        "The header is not complete.",
        "Link the program again; look for a full disk or a broken transfer.");

    /// <summary>Not a 32-bit ELF file.</summary>
    public static FindingRule ElfClass { get; } = new(
        "CW2052",
        FindingSeverity.Error,
        "Not a 32-bit ELF file",
        "Cartridge programs are linked as 32-bit files; a 64-bit one usually comes from the compiler of the computer at hand.",
        "Build with the console's cross compiler, link as 32-bit, or turn it into a raw binary or Intel HEX file with GNU objcopy.");

    /// <summary>Unknown byte order.</summary>
    public static FindingRule ElfByteOrder { get; } = new(
        "CW2053",
        FindingSeverity.Error,
        "Unknown byte order",
        "No field of the file can be read without it.",
        "Link the program again.");

    /// <summary>Unknown ELF version.</summary>
    public static FindingRule ElfVersion { get; } = new(
        "CW2054",
        FindingSeverity.Error,
        "Unknown ELF version",
        "Only version 1 was ever published.",
        "Link the program again.");

    /// <summary>Object file, not a program.</summary>
    public static FindingRule ElfRelocatable { get; } = new(
        "CW2055",
        FindingSeverity.Error,
        "Object file, not a program",
        "Its addresses are settled only by linking.",
        "Link it, and name the linked file.");

    /// <summary>Position-independent program.</summary>
    public static FindingRule ElfNotFixed { get; } = new(
        "CW2056",
        FindingSeverity.Warning,
        "Position-independent program",
        "Nothing on a cartridge will adjust its addresses at start-up.",
        "Link with fixed addresses (for GNU compilers: -no-pie -static).");

    /// <summary>Not a program.</summary>
    public static FindingRule ElfKind { get; } = new(
        "CW2057",
        FindingSeverity.Error,
        "Not a program",
        "Only a linked program has a load image.",
        "Name the linked program.");

    /// <summary>Program header table damaged.</summary>
    public static FindingRule ElfTable { get; } = new(
        "CW2058",
        FindingSeverity.Error,
        "Program header table damaged",
        "It says which bytes belong where.",
        "Link the program again.");

    /// <summary>Segment outside the file.</summary>
    public static FindingRule ElfOutside { get; } = new(
        "CW2059",
        FindingSeverity.Error,
        "Segment outside the file",
        "Its bytes are not there: the file was cut short.",
        "Link the program again; look for a full disk or a broken transfer.");

    /// <summary>Segment larger than its memory.</summary>
    public static FindingRule ElfSizes { get; } = new(
        "CW2060",
        FindingSeverity.Error,
        "Segment larger than its memory",
        "No linker writes this; the file is damaged.",
        "Link the program again.");

    /// <summary>Nothing to load.</summary>
    public static FindingRule ElfNothingToLoad { get; } = new(
        "CW2061",
        FindingSeverity.Error,
        "Nothing to load",
        "Without load segments there is nothing to put into the ROM.",
        "Check that the linker script keeps the sections and that something refers to them.");

    /// <summary>Load addresses left empty.</summary>
    public static FindingRule ElfNoLoadAddress { get; } = new(
        "CW2062",
        FindingSeverity.Note,
        "Load addresses left empty",
        "Some linkers fill in the run addresses only.",
        "Nothing, when the program has no data to be copied to RAM; otherwise have the linker write load addresses.");

    /// <summary>ELF header inside the ROM.</summary>
    public static FindingRule ElfHeaderInRom { get; } = new(
        "CW2063",
        FindingSeverity.Warning,
        "ELF header inside the ROM",
        "The program begins later than its first byte in ROM; the console would run the header.",
        "Keep the headers out of the first segment in the linker script (for GNU ld: no SIZEOF_HEADERS, or option -n).");

    /// <summary>Segment runs past the last address.</summary>
    public static FindingRule ElfPastEnd { get; } = new(
        "CW2064",
        FindingSeverity.Error,
        "Segment runs past the last address",
        "Where the rest belongs is not defined.",
        "Correct the addresses in the linker script.");

    // Rows about ELF files.
    private static ImmutableArray<FindingRule> Elf =>
    [
        ElfMagic,
        ElfTruncated,
        ElfClass,
        ElfByteOrder,
        ElfVersion,
        ElfRelocatable,
        ElfNotFixed,
        ElfKind,
        ElfTable,
        ElfOutside,
        ElfSizes,
        ElfNothingToLoad,
        ElfNoLoadAddress,
        ElfHeaderInRom,
        ElfPastEnd,
    ];
}
