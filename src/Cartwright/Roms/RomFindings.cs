using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Roms;

/// <summary>What can be wrong with places and sizes.</summary>
public static class RomFindings
{
    /// <summary>Two programs claim the same bytes and differ.</summary>
    public static readonly FindingRule Overlap = new("CW3001", FindingSeverity.Error, "Programs overlap",
        "Only one of the two can be in the ROM.", "Move one of them, or take one out.");

    /// <summary>Two programs claim the same bytes and agree.</summary>
    public static readonly FindingRule SameTwice = new("CW3002", FindingSeverity.Note, "Programs overlap with equal bytes",
        "The result is the same whichever comes first, but the overlap may not be meant.", "Nothing, if it is meant.");

    /// <summary>The stated size is too small for the programs.</summary>
    public static readonly FindingRule TooSmall = new("CW3003", FindingSeverity.Error, "Size too small",
        "Bytes would be cut off.", "State a larger size, or `fit`.");

    /// <summary>The stated size is not one the platform has.</summary>
    public static readonly FindingRule IllegalSize = new("CW3004", FindingSeverity.Error, "Size not legal",
        "The console, or the board's address lines, cannot present a ROM of this size.", "State a legal size, or `fit`.");

    /// <summary>The programs are larger than any legal size.</summary>
    public static readonly FindingRule TooLarge = new("CW3005", FindingSeverity.Error, "Programs larger than the platform allows",
        "The console cannot see more than this.", "Leave something out, or use a layout with more room.");

    /// <summary>An address that is not in the ROM.</summary>
    public static readonly FindingRule NotInRom = new("CW3006", FindingSeverity.Error, "Address not in the ROM",
        "Bytes at this address cannot be on the cartridge's ROM.", "Correct the address or the linker's memory map.");

    /// <summary>A text that is no address or offset.</summary>
    public static readonly FindingRule BadAddress = new("CW3007", FindingSeverity.Error, "Not an address",
        "The place of a program must be readable.", "Write the address in one of the forms named.");

    /// <summary>A region the platform does not have, or the choice between several not made.</summary>
    public static readonly FindingRule BadRegion = new("CW3008", FindingSeverity.Error, "No such region",
        "Each region goes to chips of its own.", "Name one of the platform's regions.");

    /// <summary>A region that must have a program and has none.</summary>
    public static readonly FindingRule EmptyRegion = new("CW3009", FindingSeverity.Error, "Region without a program",
        "A ROM of nothing but fill cannot run.", "Name a program for the region.");

    /// <summary>A program without a stated place.</summary>
    public static readonly FindingRule NoPlace = new("CW3010", FindingSeverity.Error, "No place stated",
        "A raw binary does not say where it belongs.", "Give the program an `offset` or an `address`.");

    /// <summary>More of a file was asked for than it holds.</summary>
    public static readonly FindingRule SliceOutside = new("CW3011", FindingSeverity.Error, "Part of a file outside the file",
        "There are no such bytes.", "Correct `skip` and `length`.");

    /// <summary>A program in another order than the console's.</summary>
    public static readonly FindingRule Reordered = new("CW3012", FindingSeverity.Note, "Program brought to the console's order",
        "The file's bytes are in another order than the console reads them.", "Nothing; state `order` to choose it yourself.");

    /// <summary>A program whose length does not fit its order.</summary>
    public static readonly FindingRule UnevenOrder = new("CW3013", FindingSeverity.Error, "Length does not fit the order",
        "An order exchanges whole words or blocks; a file that ends inside one was cut, or is not in this order.", "Correct `order`, or pad the file.");

    /// <summary>A bus-conflict table that does not hold the values written over it.</summary>
    public static readonly FindingRule ConflictTable = new("CW3014", FindingSeverity.Error, "Bus-conflict table wrong",
        "The ROM answers while the console writes, so that the latch sees the written value AND the ROM's byte: another bank than the one asked for.",
        "Put a table with exactly these values there, in a bank that is visible whenever it is written to.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [Overlap, SameTwice, TooSmall, IllegalSize, TooLarge, NotInRom, BadAddress, BadRegion, EmptyRegion, NoPlace, SliceOutside, Reordered, UnevenOrder, ConflictTable];
}
