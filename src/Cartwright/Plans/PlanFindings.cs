using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Plans;

/// <summary>Everything there may be to say of rewriting a chip.</summary>
public static class PlanFindings
{
    /// <summary>A file is not as long as the chip.</summary>
    public static FindingRule NotWhole { get; } = new(
        "CW5700", Error, "Not the chip's whole contents",
        "A sector is erased as a whole: what a file does not hold would be lost, and nobody could say what it was.",
        "Take a read-back and a chip image that are both as long as the chip; `cartwright build` writes such images.");

    /// <summary>The sectors depend on which end of the chip has the small ones.</summary>
    public static FindingRule EndUnknown { get; } = new(
        "CW5701", Error, "Top or bottom not said",
        "Parts of this name come with their small sectors at the lowest or at the highest addresses, and a sector erased by mistake loses what it held.",
        "Look at the letter T or B in the marking and write the whole name, or say `--boot top` or `--boot bottom`.");

    /// <summary>The catalogue does not know the sectors.</summary>
    public static FindingRule SectorsUnknown { get; } = new(
        "CW5702", Error, "Sectors not known",
        "Without the sizes of its sectors nobody can say what an erase takes with it.",
        "Take them from the data sheet and state them: `--sectors \"16KiB 2x8KiB 32KiB 7x64KiB\"`.");

    /// <summary>A stated sector map that cannot be.</summary>
    public static FindingRule BadMap { get; } = new(
        "CW5703", Error, "Sector map that cannot be",
        "The sizes of all sectors together are the size of the chip, and each is a whole number of words.",
        "Count the sectors of the data sheet again, from address 0 upward.");

    /// <summary>A chip that cannot be erased would have to be.</summary>
    public static FindingRule NeedsNewChip { get; } = new(
        "CW5704", Error, "Needs a new chip",
        "Programming turns ones into zeros only, and this part has no way back.",
        "Take a blank chip, or one of an erasable part, for the new contents.");

    /// <summary>The sector map was not seen in a source.</summary>
    public static FindingRule MapFromMemory { get; } = new(
        "CW5705", Note, "Sector map from memory",
        "A sector that is larger than thought takes its neighbour's bytes with it when it is erased.",
        "Compare the sectors with the data sheet before you erase single ones, or state them with `--sectors`.");

    /// <summary>The row stands for variants with other sectors too.</summary>
    public static FindingRule SeveralMaps { get; } = new(
        "CW5706", Note, "Variants with other sectors",
        "The catalogue's row stands for several variants, and its map is that of the first.",
        "Look up the variant's own sectors in the data sheet, and state them with `--sectors` if they differ.");

    /// <summary>A small area changes in a sector that holds much else.</summary>
    public static FindingRule SharedSector { get; } = new(
        "CW5707", Note, "Small change in a shared sector",
        "The whole sector is erased and written again for it; if power fails meanwhile, the rest of the sector is lost as well.",
        "Give an area that changes often a sector of its own: place it at an address that a sector begins at.");

    /// <summary>A small area lies across the boundary of two sectors.</summary>
    public static FindingRule AcrossBoundary { get; } = new(
        "CW5708", Note, "Change across a sector boundary",
        "Two sectors are erased and written where one would do.",
        "Move the area so that it lies in one sector.");

    /// <summary>A part that corrects errors is to be programmed twice between erases.</summary>
    /// <remarks>Program pages of the S29GL-S: from memory.</remarks>
    public static FindingRule ProgrammedTwice { get; } = new(
        "CW5709", Warning, "Programmed twice between erases",
        "This part corrects errors in units of 16 bytes, and stops doing so for a unit that is programmed a second time (from memory).",
        "Erase these sectors all the same, or look in the data sheet whether that matters to you.");

    /// <summary>The part's contents are no matter of erasing and programming.</summary>
    public static FindingRule NotWritten { get; } = new(
        "CW5710", Error, "Nothing to plan",
        "RAM is written by the console while it runs and, without power, forgets what it held.",
        "Name the flash, EPROM or EEPROM part that the file is for.");

    /// <summary>The part has not the data lines asked for.</summary>
    public static FindingRule WrongWidth { get; } = new(
        "CW5711", Error, "Part without these data lines",
        "The number of data lines decides how many programming steps it takes.",
        "Leave `--width` out: the part's own width is taken then.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        NotWhole, EndUnknown, SectorsUnknown, BadMap, NeedsNewChip, MapFromMemory, SeveralMaps, SharedSector, AcrossBoundary, ProgrammedTwice, NotWritten, WrongWidth,
    ];
}
