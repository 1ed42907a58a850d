using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Saves;

/// <summary>What keeping and comparing saves may have to say.</summary>
public static class KeepFindings
{
    /// <summary>One read only.</summary>
    public static FindingRule OneRead { get; } = new(
        "CW9537", Warning, "One read only",
        "A single read may be wrong in a few bytes without looking so, and it shows only when the original is gone.",
        "Read the memory a second time, and name both files.");

    /// <summary>Two reads that differ.</summary>
    public static FindingRule ReadsDiffer { get; } = new(
        "CW9538", Warning, "Two reads differ",
        "At least one of them is wrong; a bad contact, a weak cell or a reader that is too fast are the usual reasons.",
        "Clean the contacts and read again until two reads agree; do nothing else to the cartridge before.");

    /// <summary>The same file twice.</summary>
    public static FindingRule SameFile { get; } = new(
        "CW9539", Error, "One file named twice",
        "A file agrees with itself, whatever is in it; that proves nothing about the read.",
        "Read the memory a second time into another file.");

    /// <summary>The index cannot be read.</summary>
    public static FindingRule BadIndex { get; } = new(
        "CW9540", Error, "Index of kept saves cannot be read",
        "Without it nobody knows which generations there are; the saves themselves lie beside it.",
        "Restore the index from a copy, or keep on in another folder; it is never overwritten while it is unreadable.");

    /// <summary>A kept file is another now.</summary>
    public static FindingRule Changed { get; } = new(
        "CW9541", Error, "Kept save was changed",
        "A generation that is not what was read cannot be trusted to bring the player's progress back.",
        "Restore the file from a copy of the folder, or use an earlier generation.");

    /// <summary>A kept file is not there.</summary>
    public static FindingRule Missing { get; } = new(
        "CW9542", Error, "Kept save is missing",
        "The index names a save that nobody can bring back.",
        "Restore the file from a copy of the folder.");

    /// <summary>A file stands where a new generation goes.</summary>
    public static FindingRule InTheWay { get; } = new(
        "CW9543", Error, "Something in the way of a generation",
        "A kept save is never replaced, and this one may be somebody's only copy.",
        "Restore the index that names it, or move the file away.");

    /// <summary>The save is an earlier one.</summary>
    public static FindingRule SameAsEarlier { get; } = new(
        "CW9544", Note, "Same as an earlier generation",
        "Nothing has been written since, or the game was not played on this cartridge.",
        "Nothing; that the save was still the same on this day is worth knowing.");

    /// <summary>A unit with a name no file can have.</summary>
    public static FindingRule BadUnit { get; } = new(
        "CW9545", Error, "Unit without a usable name",
        "The name becomes a part of the file's name, on cards of every kind.",
        "Use the serial number on the label.");

    /// <summary>A date that is none.</summary>
    public static FindingRule BadDate { get; } = new(
        "CW9546", Error, "No date",
        "Days and months are written in different orders around the world, and a guess would put generations out of order.",
        "Write year, month and day with hyphens: 2026-11-25.");

    /// <summary>There is no such folder.</summary>
    public static FindingRule NoFolder { get; } = new(
        "CW9547", Error, "No folder of kept saves",
        "There is nothing to list.",
        "Check the name; `cartwright save keep DIR FILE --unit ID` makes the folder.");

    /// <summary>Two saves of different lengths.</summary>
    public static FindingRule Lengths { get; } = new(
        "CW9548", Warning, "Saves of different lengths",
        "Only the bytes both have are compared; one may be padded, cut short, expanded to another layout, or carry the record of a clock at its end.",
        "Bring both into one layout before you compare.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [OneRead, ReadsDiffer, SameFile, BadIndex, Changed, Missing, InTheWay, SameAsEarlier, BadUnit, BadDate, NoFolder, Lengths];
}
