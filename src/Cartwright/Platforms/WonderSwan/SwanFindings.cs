using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>What can be wrong with a WonderSwan ROM besides the fields themselves.</summary>
public static class SwanFindings
{
    /// <summary>No far jump at reset.</summary>
    public static readonly FindingRule NoJump = new("CW4415", FindingSeverity.Error, "No jump at reset",
        "The processor starts at the footer's first byte, which must be a far jump, EA.", "Link the footer to the last 16 bytes, or state `entry`, such as F000:0000 for $F0000.");

    /// <summary>The jump leaves the ROM.</summary>
    public static readonly FindingRule JumpNowhere = new("CW4416", FindingSeverity.Error, "Jump leaves the ROM",
        "After power-on the end of the ROM is seen up to $FFFFF, and no more than 768 KiB of it.", "Correct the footer's jump, or place the program at the end of the ROM.");

    /// <summary>The boot ROM refuses the maintenance byte.</summary>
    public static readonly FindingRule Refused = new("CW4417", FindingSeverity.Error, "Boot ROM refuses the footer",
        "The low half of the sixth byte must be 0.", "Take `maintenance` out, or state it as 0x00 or 0x80.");

    /// <summary>A size without a code.</summary>
    public static readonly FindingRule NoSizeCode = new("CW4418", FindingSeverity.Note, "Size has no code of its own",
        "The smallest size there is a code for stands in the footer.", "State `rom.size` as 128KiB to have a code that is true.");

    /// <summary>A save code without an agreed meaning.</summary>
    public static readonly FindingRule UnclearSave = new("CW4419", FindingSeverity.Warning, "Save code has no agreed meaning",
        "Code 01 is 8 KiB in some tables and 32 KiB in others.", "State `save` as `sram-32KiB`.");

    /// <summary>More than the mapper reaches.</summary>
    public static readonly FindingRule BeyondMapper = new("CW4420", FindingSeverity.Error, "ROM larger than the mapper reaches",
        "Mapper 2001 has four bits for banks of 1 MiB; what is beyond 16 MiB is never seen.", "State `mapper` as 2003 and use a board that has one, or make the ROM smaller.");

    /// <summary>A game number that is not in decimal digits.</summary>
    public static readonly FindingRule GameIdForm = new("CW4421", FindingSeverity.Note, "Game number is not in decimal digits",
        "The field holds the last two digits of the product number, one in each half.", "State `gameId` with decimal digits, such as 0x42.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [NoJump, JumpNowhere, Refused, NoSizeCode, UnclearSave, BeyondMapper, GameIdForm];
}
