using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>What can be wrong with a 32X ROM besides what can be wrong with any of the Mega Drive.</summary>
public static class Sega32XFindings
{
    /// <summary>No start-up block.</summary>
    public static readonly FindingRule NoStartUp = new("CW4590", FindingSeverity.Warning, "No start-up block",
        "The 68000 begins at 0x3F0 with a fixed block that turns the adapter on and that must be right to the byte (from memory). It is not ours to give, and is never made here.",
        "Add the block you have the right to use as a program with `\"as\": \"startUp\"`, or link it into the program at 0x3F0.");

    /// <summary>The start-up block has holes, or pieces of several programs.</summary>
    public static readonly FindingRule StartUpBroken = new("CW4591", FindingSeverity.Warning, "Start-up block not of one piece",
        "The block at 0x3F0-0x7FF is of one piece and fixed to the byte (from memory); it is kept here as the programs give it.",
        "Let one program give the whole block. A second copy with `\"as\": \"startUp\"` is compared with the first, and a difference is an error.");

    /// <summary>The 68000 begins elsewhere.</summary>
    public static readonly FindingRule EntryElsewhere = new("CW4592", FindingSeverity.Warning, "Entry is not the start-up block",
        "With the entry at 0x3F0 the start-up block is run first; without it the adapter stays off.", "Let the second vector be $000003F0.");

    /// <summary>A vector that is neither the start-up block nor the table of jumps.</summary>
    public static readonly FindingRule VectorElsewhere = new("CW4593", FindingSeverity.Note, "Unusual exception vector",
        "With the adapter on, other vectors take the place of the ROM's own; they normally lead to 0x3F0 or into the table of jumps at 0x200.",
        "Nothing, if the program knows what it does.");

    /// <summary>No module header.</summary>
    public static readonly FindingRule NoModule = new("CW4594", FindingSeverity.Warning, "No module header",
        "Without the header at 0x3C0 the SH-2 processors have nothing to run (from memory).", "Put the header into the program at 0x3C0, or state its fields.");

    /// <summary>A module of another name.</summary>
    public static readonly FindingRule ModuleName = new("CW4595", FindingSeverity.Note, "Unusual module name",
        "Most programs have `MARS CHECK MODE` here.", "Nothing, unless the header lies elsewhere.");

    /// <summary>The SH-2 program reaches past the ROM.</summary>
    public static readonly FindingRule CodeOutside = new("CW4596", FindingSeverity.Warning, "SH-2 program reaches past the ROM",
        "What is copied into the SH-2 processors' RAM must lie in the ROM (from memory).", "Correct `codeSource` and `codeLength`, or the linker's memory map.");

    /// <summary>An SH-2 start that cannot be run.</summary>
    public static readonly FindingRule StartOutside = new("CW4597", FindingSeverity.Warning, "SH-2 start cannot be run",
        "An SH-2 instruction lies at an even address, and the ROM begins at $02000000 for these processors (from memory).", "Correct `masterStart` or `slaveStart`, or the linker's memory map.");

    /// <summary>No program behind the start-up block.</summary>
    public static readonly FindingRule NoUserCode = new("CW4598", FindingSeverity.Warning, "No program behind the start-up block",
        "The 68000 goes on at 0x800 when the start-up block is through (from memory).", "Let the 68000's program begin at 0x800.");

    /// <summary>A system type that does not say 32X.</summary>
    public static readonly FindingRule OtherSystem = new("CW4599", FindingSeverity.Note, "System type does not say 32X",
        "Any text that begins with SEGA starts on the console; programs that recognise images go by `SEGA 32X`.", "Leave `systemType` out.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [NoStartUp, StartUpBroken, EntryElsewhere, VectorElsewhere, NoModule, ModuleName, CodeOutside, StartOutside, NoUserCode, OtherSystem];
}
