using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.PcEngine;

/// <summary>What can be wrong with a PC Engine ROM.</summary>
public static class PcEngineFindings
{
    /// <summary>The 512 bytes of a copier are left in a program.</summary>
    public static readonly FindingRule CopierPrefix = new("CW4400", FindingSeverity.Error, "Copier prefix left in a program",
        "The 512 bytes belong to no card; with them every byte lies at the wrong place.", "State `\"skip\": 512` for the program.");

    /// <summary>The bits of the program are in the wrong order.</summary>
    public static readonly FindingRule ReversedProgram = new("CW4401", FindingSeverity.Error, "Bits of the program are reversed",
        "A ROM is held in the processor's order; a board with reversed data lines has its chip file reversed for it, once.",
        "State `\"order\": \"bit-reversed\"` for the program, and let the board say how its data lines run.");

    /// <summary>No program puts anything at the reset vector.</summary>
    public static readonly FindingRule NoResetVector = new("CW4402", FindingSeverity.Error, "No reset vector",
        "The processor takes its first instruction's address from the end of the first 8 KiB; fill there starts nothing.",
        "Place the program whose vectors end the first 8 KiB at offset 0.");

    /// <summary>The reset vector does not lead into bank 0.</summary>
    public static readonly FindingRule ResetElsewhere = new("CW4403", FindingSeverity.Error, "Reset vector leaves bank 0",
        "At reset only bank 0 of the card is seen, at $E000-$FFFF.", "Correct the reset vector, or link bank 0 for $E000.");

    /// <summary>The reset vector leads to fill.</summary>
    public static readonly FindingRule ResetNowhere = new("CW4404", FindingSeverity.Error, "Reset vector leads to no program",
        "The processor would run fill.", "Correct the reset vector, or place the program that begins there.");

    /// <summary>An interrupt vector leads to fill.</summary>
    public static readonly FindingRule InterruptNowhere = new("CW4405", FindingSeverity.Warning, "Interrupt vector leads to no program",
        "An interrupt of that kind would run fill; the places of these vectors are from memory.", "Correct the vector, or set it to $FFFF where the interrupt is never allowed.");

    /// <summary>The size is no power of two.</summary>
    public static readonly FindingRule Completed = new("CW4406", FindingSeverity.Note, "Size is no power of two",
        "Chips and boards have powers of two; the end of the ROM is repeated up to the next one.", "Nothing, or state a power of two as `rom.size`.");

    /// <summary>A program of 384 KiB in a larger ROM.</summary>
    public static readonly FindingRule ThreeEighths = new("CW4407", FindingSeverity.Warning, "384 KiB in a larger ROM",
        "In a card of 384 KiB the last 128 KiB are seen from bank 40 on; in this ROM they are seen from bank 20 on.",
        "State `rom.size` as 384KiB, unless the program looks for them in bank 20.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [CopierPrefix, ReversedProgram, NoResetVector, ResetElsewhere, ResetNowhere, InterruptNowhere, Completed, ThreeEighths];
}
