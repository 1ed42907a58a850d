using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Saves;

/// <summary>Everything that may have to be said of files of save memory.</summary>
public static class SaveFindings
{
    /// <summary>The file has no bytes.</summary>
    public static FindingRule Empty { get; } = new("CW9500", Error, "Save without a byte",
        "Nothing was copied; a tool that failed often leaves such a file.", "Read the cartridge again, twice, and compare.");

    /// <summary>The size is none that the platform's memories have.</summary>
    public static FindingRule NoSuchSize { get; } = new("CW9501", Warning, "Not a customary save size",
        "The file may be cut short, padded, or no save of this platform.", "Compare with `cartwright save kinds PLATFORM`, and with the size marked on the cartridge's chip.");

    /// <summary>No whole number of units.</summary>
    public static FindingRule NotWhole { get; } = new("CW9502", Error, "Save of a broken length",
        "A layout moves whole words or blocks; with a part of one the rest would stand in the wrong place.", "Look for a whole copy of the file, or name the clock behind it with +clock44 or +clock48.");

    /// <summary>Larger than any save memory.</summary>
    public static FindingRule TooLarge { get; } = new("CW9503", Error, "Larger than any save memory",
        "A file of that size is a program, a disk image, or many saves together.", "Name the save file; `cartwright examine` looks at programs.");

    /// <summary>No layout of that name.</summary>
    public static FindingRule UnknownLayout { get; } = new("CW9504", Error, "Unknown layout",
        "Without its layout nobody knows what a byte of the file stands for.", "Take a layout that `cartwright save kinds PLATFORM` lists.");

    /// <summary>The platform's saves are not met in that layout.</summary>
    public static FindingRule NotOfPlatform { get; } = new("CW9505", Error, "Layout of another platform",
        "Bytes moved to where no memory of this platform has them are lost to the game.", "Take a layout that `cartwright save kinds PLATFORM` lists.");

    /// <summary>The file is not in the layout that was named.</summary>
    public static FindingRule NotInLayout { get; } = new("CW9506", Error, "File in another layout",
        "Something stands where the layout has filler or a copy; it would be lost.", "Let `cartwright save examine` say which layouts fit.");

    /// <summary>What would be cut off is no filler.</summary>
    public static FindingRule WouldCut { get; } = new("CW9507", Error, "Bytes that would be cut off",
        "They are neither FF nor 00 throughout nor a repetition of what stands before them, so they may be the player's.", "Choose a larger --size, or leave it out.");

    /// <summary>The clock's record would be lost.</summary>
    public static FindingRule ClockLost { get; } = new("CW9508", Error, "Clock that would be lost",
        "Without its record the clock starts from zero, and what the game counted by it is gone.", "Keep it with +clock44 or +clock48 in --to, or say with --drop-clock that it may go.");

    /// <summary>The file is text.</summary>
    public static FindingRule Text { get; } = new("CW9509", Warning, "Text, not a save",
        "Save memory holds bytes of every value; a web page or a list saved by mistake holds letters only.", "Open the file in an editor, and look for the right one.");

    /// <summary>Several kinds or layouts fit.</summary>
    public static FindingRule Ambiguous { get; } = new("CW9510", Note, "Several kinds or layouts fit",
        "A guess could move every byte of the player's progress to a wrong place.", "Decide by what the rows say, and by a place of the save whose bytes you know.");

    /// <summary>All bytes alike.</summary>
    public static FindingRule AllAlike { get; } = new("CW9511", Note, "All bytes alike",
        "It is a new save, or a memory that did not answer: a chip without supply and a bad contact read the same.", "Read again; if the game has shown progress, clean the contacts first and keep this file for nothing.");

    /// <summary>Bytes follow the address.</summary>
    public static FindingRule Echo { get; } = new("CW9512", Warning, "Address instead of contents",
        "Where no memory answers, the bus may still hold the address; this is no save.", "Check that the save memory is enabled while it is read, clean the contacts, and read again.");

    /// <summary>No order in the bytes.</summary>
    public static FindingRule Noise { get; } = new("CW9513", Note, "Bytes without order",
        "RAM that lost its supply wakes with such contents; a packed or encrypted save, or one of a board with exchanged lines, looks the same.", "Read again after a power cycle: a save stays, noise changes.");

    /// <summary>Contents end at a boundary in the middle.</summary>
    public static FindingRule HalfWritten { get; } = new("CW9514", Warning, "Blank from the middle on",
        "The contents end at a power of two and all behind it is blank: a write or a copy may have stopped there, or the memory is smaller than the file.", "Compare with another read, and with the size of the chip.");

    /// <summary>The memory does not fit the cart.</summary>
    public static FindingRule DoesNotFit { get; } = new("CW9515", Error, "Save that does not fit the cart",
        "No kind and layout of the cart's platform has a file of this length, or the cart says another size.", "Take the save of this game, or bring it into its layout with `cartwright save convert`.");

    /// <summary>Lines that cannot be those of the memory.</summary>
    public static FindingRule Wiring { get; } = new("CW9516", Error, "Lines that do not belong to the memory",
        "An order of lines moves every byte; one of a wrong number of lines moves none rightly.", "Give one chip line for each line of the bus, as many as the memory has.");

    /// <summary>The way back gives other bytes.</summary>
    public static FindingRule NotBack { get; } = new("CW9517", Error, "No way back",
        "Brought back, the result is not the file it came from; something would be lost, so nothing is written.", "Choose a layout that holds every bit of the memory.");

    /// <summary>Nothing is known of save memory on the platform.</summary>
    public static FindingRule NoMemory { get; } = new("CW9518", Error, "Platform without save memory",
        "No kind of save memory is known on its cartridges, so no layout either.", "Name the platform whose cartridge the save comes from.");

    /// <summary>The larger size does not take the contents.</summary>
    public static FindingRule NoRoom { get; } = new("CW9519", Error, "Contents that do not fit the size",
        "Contents repeat only a whole number of times, and larger ones have no place.", "Choose another size, or fill with a value instead.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        Empty, NoSuchSize, NotWhole, TooLarge, UnknownLayout, NotOfPlatform, NotInLayout, WouldCut, ClockLost, Text,
        Ambiguous, AllAlike, Echo, Noise, HalfWritten, DoesNotFit, Wiring, NotBack, NoMemory, NoRoom,
    ];
}
