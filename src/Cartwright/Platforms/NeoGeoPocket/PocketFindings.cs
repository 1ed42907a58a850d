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

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NoLicence, BadEntry, Filled, ReservedUsed];
}
