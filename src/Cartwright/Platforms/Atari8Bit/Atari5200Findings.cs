using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>What the bytes of a 5200 cart can show to be wrong.</summary>
public static class Atari5200Findings
{
    /// <summary>A program still has the container in front.</summary>
    public static readonly FindingRule ContainerInside = new("CW4475", FindingSeverity.Error, "CART container left in a program",
        "The container's 16 bytes are on no chip; with them in front everything is in the wrong place.", "Give the program `skip: 16`.");

    /// <summary>The start lies outside the cartridge.</summary>
    public static readonly FindingRule StartOutside = new("CW4476", FindingSeverity.Error, "Start address outside the cartridge",
        "The console goes to the address in $BFFE, and the cartridge is at $4000-$BFFF.", "Correct the start address.");

    /// <summary>The start leads to fill.</summary>
    public static readonly FindingRule StartUncovered = new("CW4477", FindingSeverity.Error, "Start address outside every program",
        "The console would run fill bytes.", "Correct the start address, or the place of the program.");

    /// <summary>The title is in ASCII.</summary>
    public static readonly FindingRule TitleAscii = new("CW4478", FindingSeverity.Warning, "Title in ASCII",
        "The console shows display codes, which are ASCII less 0x20: it would show other letters.", "Take the title out of the program and state `cart.title`.");

    /// <summary>The year is none.</summary>
    public static readonly FindingRule YearNotDigits = new("CW4479", FindingSeverity.Note, "Year is no number",
        "The console shows garbage for it; the game still starts.", "State `year`.");

    /// <summary>A title that nobody sees.</summary>
    public static readonly FindingRule TitleNotShown = new("CW4480", FindingSeverity.Note, "Title is not shown",
        "With 0xFF at $BFFD the console starts the game at once, without logo, title and year.", "State `year` to have the title shown; otherwise nothing.");

    /// <summary>The program is linked for the other kind of board.</summary>
    public static readonly FindingRule OneOrTwoChips = new("CW4481", FindingSeverity.Warning, "Jumps go with the other kind of board",
        "16 KiB in one chip and in two are seen at different addresses, and nothing in the ROM says which it is for.", "Compare the program's linker map with `scheme`.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [ContainerInside, StartOutside, StartUncovered, TitleAscii, YearNotDigits, TitleNotShown, OneOrTwoChips];
}
