using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Commodore;

/// <summary>What the checks of these machines may have to say.</summary>
public static class CommodoreFindings
{
    /// <summary>A load address in front of a program that has the machine's mark.</summary>
    public static readonly FindingRule LoadAddress = new("CW4520", FindingSeverity.Error, "Load address left in a program",
        "The two bytes are for the loader and shift everything behind them; the machine would not find the mark.", "Give the program `skip: 2`.");

    /// <summary>What looks like a load address.</summary>
    public static readonly FindingRule MaybeLoadAddress = new("CW4521", FindingSeverity.Warning, "Program may begin with a load address",
        "The two bytes are for the loader and do not belong on a chip.", "If they are a load address, give the program `skip: 2`.");

    /// <summary>A container as a program.</summary>
    public static readonly FindingRule ContainerInside = new("CW4522", FindingSeverity.Error, "Container in place of a program",
        "Its headers would be on the chip.", "Name the packets' bytes with `skip` and `length`.");

    /// <summary>No mark.</summary>
    public static readonly FindingRule NoMark = new("CW4523", FindingSeverity.Error, "No cartridge mark",
        "The machine starts no cartridge without it.", "Free the mark's place; for a cartridge that is started by hand state what the program holds there as `header.mark`.");

    /// <summary>A cartridge that does not start by itself.</summary>
    public static readonly FindingRule ByHand = new("CW4524", FindingSeverity.Note, "Cartridge does not start by itself",
        "The user must start it with SYS or a key.", "Nothing, if that is meant.");

    /// <summary>A cold start where no program is.</summary>
    public static readonly FindingRule ColdStartNowhere = new("CW4525", FindingSeverity.Error, "Cold start leads to no program",
        "The machine jumps there at power-on.", "State `header.coldStart` as an address of the program.");

    /// <summary>A cold start outside the cartridge.</summary>
    public static readonly FindingRule ColdStartElsewhere = new("CW4526", FindingSeverity.Warning, "Cold start outside the cartridge",
        "At power-on RAM holds nothing, and only the machine's own ROMs are elsewhere.", "State `header.coldStart` as an address of the program.");

    /// <summary>A cold start inside the header.</summary>
    public static readonly FindingRule StartInHeader = new("CW4527", FindingSeverity.Warning, "Cold start inside the header",
        "The processor would run the header's own bytes.", "State `header.coldStart` as an address behind the header.");

    /// <summary>A warm start where no program is.</summary>
    public static readonly FindingRule WarmStartNowhere = new("CW4528", FindingSeverity.Warning, "Warm start leads to no program",
        "The RESTORE key crashes the game.", "State `header.warmStart` as an address of the program.");

    /// <summary>The halves of the ROM in the wrong order.</summary>
    public static readonly FindingRule HalvesSwapped = new("CW4529", FindingSeverity.Error, "Halves of the ROM exchanged",
        "The mark is where the machine does not look.", "Give the programs their addresses.");

    /// <summary>Nothing in the upper half.</summary>
    public static readonly FindingRule EmptyHalf = new("CW4530", FindingSeverity.Warning, "Nothing in the upper half of the ROM",
        "With both lines low it hides BASIC at $A000 all the same.", "State `header.mapping` as `8k`, or put a program at $A000.");

    /// <summary>Lines that are not the mapping's.</summary>
    public static readonly FindingRule OtherLines = new("CW4531", FindingSeverity.Warning, "Lines are not those of the mapping",
        "The values are levels: low is asserted. Loaders show the ROM as they say.", "Take `exrom` and `game` out of `header`, or state another `header.mapping`.");

    /// <summary>Lines of no cartridge.</summary>
    public static readonly FindingRule NoLines = new("CW4532", FindingSeverity.Warning, "Lines say there is no cartridge",
        "With both lines high the machine sees none of the ROM.", "Take `exrom` and `game` out of `header`.");

    /// <summary>A reset vector where no program is.</summary>
    public static readonly FindingRule ResetNowhere = new("CW4533", FindingSeverity.Error, "Reset leads to no program",
        "Without the KERNAL the processor starts there.", "State `header.reset` as an address of the program.");

    /// <summary>A handler where no program is.</summary>
    public static readonly FindingRule HandlerNowhere = new("CW4534", FindingSeverity.Warning, "Handler leads to no program",
        "The first interrupt, or the RESTORE key, crashes the game.", "State it in `header` as the address of a handler.");

    /// <summary>No jump where one belongs.</summary>
    public static readonly FindingRule NoJump = new("CW4535", FindingSeverity.Warning, "No jump in the header",
        "The machine runs these three bytes, and other instructions run into what follows.", "State the jump's field as `jmp`, or free its place.");

    /// <summary>Bytes under the machine's registers.</summary>
    public static readonly FindingRule Hidden = new("CW4536", FindingSeverity.Note, "Bytes nobody can see",
        "$FF00-$FFFF does not show the function ROM (from memory).", "Leave the last 256 bytes blank.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        LoadAddress, MaybeLoadAddress, ContainerInside, NoMark, ByHand, ColdStartNowhere, ColdStartElsewhere, StartInHeader, WarmStartNowhere,
        HalvesSwapped, EmptyHalf, OtherLines, NoLines, ResetNowhere, HandlerNowhere, NoJump, Hidden,
    ];
}
