using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.NeoGeoPocket;

/// <summary>What can be wrong with a Neo Geo Pocket ROM besides the fields themselves.</summary>
public static class PocketFindings
{
    /// <summary>The licence text is not one the boot ROM takes.</summary>
    public static readonly FindingRule NoLicence = new("CW4430", FindingSeverity.Error, "Licence text missing",
        "The boot ROM starts a cartridge by this text.", "Keep the first 64 bytes free in the linker's map, and the text is written.");

    /// <summary>The entry is not in the ROM.</summary>
    public static readonly FindingRule BadEntry = new("CW4431", FindingSeverity.Error, "Entry goes nowhere",
        "The boot ROM jumps to this address.", "State `entry` as an address from $200040 on where a program lies.");

    /// <summary>The ROM is filled with another value than 0xFF.</summary>
    public static readonly FindingRule Filled = new("CW4432", FindingSeverity.Warning, "Filled with another value than FF",
        "Saves are written into blank blocks of the same chip; a block of other bytes must be erased first.", "Leave `rom.fill` at 0xFF.");

    /// <summary>Reserved bytes are not zero.</summary>
    public static readonly FindingRule ReservedUsed = new("CW4433", FindingSeverity.Note, "Reserved bytes are not zero",
        "The console does not look at them; FF is seen as well.", "Nothing, or clear them in the program's source.");

    /// <summary>No block is left for saves.</summary>
    public static readonly FindingRule NoSaveBlock = new("CW4434", FindingSeverity.Note, "No blank block for saves",
        "Saves are written into blocks of the same chip; with none blank, each save erases a part of the ROM.", "Nothing if the game does not save; otherwise leave a block of 0xFF, or state a larger `rom.size`.");

    /// <summary>A software id that is not in decimal digits.</summary>
    public static readonly FindingRule SoftwareIdForm = new("CW4435", FindingSeverity.Note, "Software id is not in decimal digits",
        "The field holds four decimal digits, one in each half of a byte.", "State `softwareId` with decimal digits, such as 0x1234, or 0x0000 for none.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NoLicence, BadEntry, Filled, ReservedUsed, NoSaveBlock, SoftwareIdForm];
}
