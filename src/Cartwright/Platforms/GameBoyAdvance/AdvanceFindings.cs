using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>What can be wrong with a Game Boy Advance ROM besides the fields themselves.</summary>
public static class AdvanceFindings
{
    /// <summary>The entry is no branch into the ROM.</summary>
    public static readonly FindingRule BadEntry = new("CW4300", FindingSeverity.Error, "Entry goes nowhere",
        "The console runs the ARM instruction at 0x00 first; it must branch over the header to code.", "Link a branch to 0x00, or leave the four bytes blank: 2E0000EA goes to 0xC0.");

    /// <summary>The entry is no branch.</summary>
    public static readonly FindingRule NoBranch = new("CW4301", FindingSeverity.Warning, "Entry is no branch",
        "Behind the first instruction comes the boot bitmap, which is no code.", "Begin the program with a branch to the code behind the header.");

    /// <summary>The boot bitmap is not right.</summary>
    public static readonly FindingRule BitmapWrong = new("CW4302", FindingSeverity.Error, "Boot bitmap is wrong",
        "The BIOS compares these bytes and stops when they differ.", "Leave the bytes blank and they are written, or state `bitmap` as `write`; to keep other bytes on purpose state it as `keep`.");

    /// <summary>Another bitmap was kept on purpose.</summary>
    public static readonly FindingRule BitmapKept = new("CW4303", FindingSeverity.Warning, "Other boot bitmap kept",
        "A console with its own BIOS does not start the cartridge.", "Nothing, if that is meant; otherwise state `bitmap` as `write`.");

    /// <summary>Debug or key bits differ from the usual.</summary>
    public static readonly FindingRule DebugBits = new("CW4304", FindingSeverity.Warning, "Debug or key bits are set otherwise",
        "The BIOS does not compare these bits, but acts on them: some units start such a cartridge, others do not.", "Leave 0x9C at 21 and 0x9E at F8.");

    /// <summary>The fixed byte is not 0x96.</summary>
    public static readonly FindingRule FixedWrong = new("CW4305", FindingSeverity.Error, "Fixed byte is wrong",
        "The BIOS and every reader know a cartridge by it.", "Leave 0xB2 blank, or take `fixedValue` out: it is always 0x96.");

    /// <summary>Reserved bytes are not zero.</summary>
    public static readonly FindingRule ReservedUsed = new("CW4306", FindingSeverity.Note, "Reserved bytes are not zero",
        "The console does not look at them; other tools remark on it.", "Clear them in the program's source.");

    /// <summary>A marker of a kind of save memory.</summary>
    public static readonly FindingRule SaveMarker = new("CW4307", FindingSeverity.Note, "Save memory marked",
        "Loaders and flash boards choose the kind of save memory by this text.", "Fit the memory it names.");

    /// <summary>Markers of several kinds.</summary>
    public static readonly FindingRule SeveralMarkers = new("CW4308", FindingSeverity.Warning, "Several kinds of save memory marked",
        "Software that goes by the text cannot tell which is meant.", "Leave only the marker of the memory the board has.");

    /// <summary>A full-size ROM with EEPROM over its end.</summary>
    public static readonly FindingRule EepromOverEnd = new("CW4309", FindingSeverity.Warning, "EEPROM lies over the ROM's end",
        "With 32 MiB the last 256 bytes answer as EEPROM, so data there cannot be read.", "Keep the last 256 bytes free.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [BadEntry, NoBranch, BitmapWrong, BitmapKept, DebugBits, FixedWrong, ReservedUsed, SaveMarker, SeveralMarkers, EepromOverEnd];
}
