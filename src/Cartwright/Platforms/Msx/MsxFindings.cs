using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Msx;

/// <summary>What the checks of this computer may have to say.</summary>
public static class MsxFindings
{
    /// <summary>No mark.</summary>
    public static readonly FindingRule NoMark = new("CW4385", FindingSeverity.Error, "No cartridge mark",
        "The BIOS passes over a slot that does not show AB at $4000 or $8000.", "Put the program where `header.mapping` begins; halves that have changed places show the mark 16 KiB too high.");

    /// <summary>The mark of a ROM inside the computer.</summary>
    public static readonly FindingRule SubRomMark = new("CW4386", FindingSeverity.Warning, "Mark of a sub-ROM",
        "The BIOS does not look for it on cartridges.", "State `header.mark` as `cartridge`.");

    /// <summary>An INIT where no program is.</summary>
    public static readonly FindingRule InitNowhere = new("CW4387", FindingSeverity.Error, "INIT leads to no program",
        "The BIOS calls it first.", "State `header.init` as an address of the program, and `header.mapping` as the board has it.");

    /// <summary>A cartridge that does nothing.</summary>
    public static readonly FindingRule NothingStarts = new("CW4388", FindingSeverity.Error, "Nothing of the cartridge is called",
        "The BIOS finds the mark and no address.", "State `header.init`.");

    /// <summary>An INIT in a window that may show another bank.</summary>
    public static readonly FindingRule InitUnsure = new("CW4389", FindingSeverity.Warning, "INIT outside the first bank",
        "Which banks the other windows show at power-on differs between boards, and sources disagree.", "Start in the first bank and set the others from there.");

    /// <summary>A second page nobody selects.</summary>
    public static readonly FindingRule OtherHalf = new("CW4390", FindingSeverity.Note, "Second page may not be selected",
        "Only the page with INIT is selected when it is called; the program must select the others.", "Nothing, if the program does it in another way.");

    /// <summary>Addresses that are none.</summary>
    public static readonly FindingRule Rubbish = new("CW4391", FindingSeverity.Warning, "Handler address is no address",
        "The BIOS calls these addresses once INIT has returned.", "State them as 0, unless the program reads these bytes itself.");

    /// <summary>A BASIC program in the wrong place.</summary>
    public static readonly FindingRule TextPlace = new("CW4392", FindingSeverity.Warning, "BASIC program outside $8000-$BFFF",
        "BASIC runs a cartridge's program there and nowhere else.", "State `header.text` as its address, or 0.");

    /// <summary>Reserved bytes.</summary>
    public static readonly FindingRule Reserved = new("CW4393", FindingSeverity.Note, "Reserved bytes in use",
        "They are meant to be 0; some cartridges hold text there.", "Nothing, if it is meant.");

    /// <summary>A bank that the sound chip hides.</summary>
    public static readonly FindingRule SoundChip = new("CW4394", FindingSeverity.Note, "Last bank shares its number with the sound chip",
        "3F in the register at $9000 opens the sound chip's registers.", "Do not show this bank at $8000.");

    /// <summary>A header for loading from a disk.</summary>
    public static readonly FindingRule LoadHeader = new("CW4395", FindingSeverity.Warning, "Load header left in a program",
        "BLOAD's seven bytes are not part of the ROM (from memory).", "Give the program `skip: 7`.");

    /// <summary>Code for another mapper.</summary>
    public static readonly FindingRule OtherMapper = new("CW4396", FindingSeverity.Note, "Program may be for another mapper",
        "Stores to fixed addresses are only a hint (from memory).", "Compare `header.mapping` with the board and the program.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [NoMark, SubRomMark, InitNowhere, NothingStarts, InitUnsure, OtherHalf, Rubbish, TextPlace, Reserved, SoundChip, LoadHeader, OtherMapper];
}
