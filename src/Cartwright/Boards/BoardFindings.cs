using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Boards;

/// <summary>What can be wrong with a board, and between a board and a ROM.</summary>
public static class BoardFindings
{
    /// <summary>No board of this name.</summary>
    public static readonly FindingRule Unknown = new("CW5001", FindingSeverity.Error, "Unknown board",
        "The board decides which bytes go to which chip.", "Run `cartwright boards` for the list, or describe your board in the manifest.");

    /// <summary>The manifest names no board.</summary>
    public static readonly FindingRule None = new("CW5002", FindingSeverity.Note, "No board named",
        "Without a board there is a ROM file but no chip files.", "Name a board with `board.use` to get chip files.");

    /// <summary>A board described in a way that contradicts itself.</summary>
    public static readonly FindingRule Contradiction = new("CW5003", FindingSeverity.Error, "Board contradicts itself",
        "Chip files for such a board would be wrong.", "Correct the description.");

    /// <summary>The board is for another platform.</summary>
    public static readonly FindingRule OtherPlatform = new("CW5004", FindingSeverity.Error, "Board of another platform",
        "Its connector and bus do not fit.", "Choose a board of the cart's platform.");

    /// <summary>The ROM has bytes no chip of the board holds.</summary>
    public static readonly FindingRule RomTooLarge = new("CW5005", FindingSeverity.Error, "ROM larger than the board",
        "Bytes would be missing from the cartridge.", "Choose a board with more room, or make the ROM smaller.");

    /// <summary>A region no site holds.</summary>
    public static readonly FindingRule RegionWithoutSite = new("CW5006", FindingSeverity.Error, "Region without a chip",
        "The region's bytes would not be on the cartridge at all.", "Choose a board with a site for the region.");

    /// <summary>A site to which nothing goes.</summary>
    public static readonly FindingRule Unused = new("CW5007", FindingSeverity.Note, "Site not used",
        "The ROM ends before this site's slice begins, or has no such region.", "Leave the site empty.");

    /// <summary>A header value the board is not wired for.</summary>
    public static readonly FindingRule NotWiredFor = new("CW5008", FindingSeverity.Warning, "Board wired for another setting",
        "The console would see the bytes in another order than the game expects.", "Choose another board, or correct the header.");

    /// <summary>The manifest names a site the board does not have.</summary>
    public static readonly FindingRule UnknownSite = new("CW5009", FindingSeverity.Error, "No such site",
        "A mistyped site would leave its chip without a part.", "Use a site of the board.");

    /// <summary>No part is named for a site.</summary>
    public static readonly FindingRule NoPart = new("CW5010", FindingSeverity.Note, "No part named",
        "The chip file is as long as its contents; a larger chip needs a longer file.", "Name the chip you will fit: `board.chips.U1.part`.");

    /// <summary>A part larger than the site's lines can address.</summary>
    public static readonly FindingRule LargerThanSite = new("CW5011", FindingSeverity.Note, "Chip larger than the site addresses",
        "Its upper address pins are not driven by the board; what they are tied to decides which part of the chip is read.",
        "Tie every unused address pin; see the board's page for how the chip is filled.");

    /// <summary>A part the catalogue lacks, with a capacity the manifest states.</summary>
    public static readonly FindingRule OwnPart = new("CW5012", FindingSeverity.Note, "Part not in the catalogue",
        "Width, supply and endurance of the part cannot be checked.", "Compare them with the data sheet.");

    /// <summary>A part of a word at the end of a region.</summary>
    public static readonly FindingRule HalfWord = new("CW5013", FindingSeverity.Error, "Region ends inside a word of the bus",
        "The bus carries two or four bytes at a time; the last byte would lack its partners.", "State a size for the region that is a whole number of words.");

    /// <summary>A stated capacity no chip file can have, or that contradicts the catalogue.</summary>
    public static readonly FindingRule BadCapacity = new("CW5014", FindingSeverity.Error, "Capacity not possible",
        "The chip file would not be as long as the chip is large.", "State the capacity of the data sheet, or name a part of the catalogue and leave it out.");

    /// <summary>A ROM that has no whole blocks.</summary>
    public static readonly FindingRule UnevenBlocks = new("CW5015", FindingSeverity.Error, "ROM does not divide into the board's blocks",
        "The console selects equal blocks; a part of one would lie in none.", "State a size that the number of blocks divides.");

    /// <summary>A site names lines the chip does not have.</summary>
    public static readonly FindingRule MoreLines = new("CW5020", FindingSeverity.Error, "More lines than the chip has",
        "The words could not be put where the bus would read them.", "Fit a larger chip whose size is a power of two, or correct `addressLines`.");

    /// <summary>An address line that is both tied and driven.</summary>
    public static readonly FindingRule LineUsedTwice = new("CW5021", FindingSeverity.Error, "Line used twice",
        "A driven line that is tied as well is a short between the bus and the supply.", "Take the tie out, or make the ROM small enough for the lines that are left.");

    /// <summary>An address line that meets nothing.</summary>
    public static readonly FindingRule OpenLine = new("CW5022", FindingSeverity.Warning, "Open address line",
        "An open input follows leakage, touch and temperature, and one that hovers between the levels makes the chip draw current; that the slice is there for both levels only hides it.",
        "Tie the pin to ground or supply, as the data sheet of the chip asks.");

    /// <summary>A chip that would be enabled when it must not be.</summary>
    public static readonly FindingRule NoInverter = new("CW5023", FindingSeverity.Warning, "Inverter missing before the enable",
        "Memory chips are enabled by a low level; without an inverter this one answers in the other half of its range.", "Put an inverter between the line and the chip's enable, or describe the board as it is.");

    /// <summary>A chip slower than the console asks for.</summary>
    public static readonly FindingRule TooSlow = new("CW5024", FindingSeverity.Warning, "Chip slower than the socket asks",
        "The console would read before the data are there; that shows as bytes that are the one before, often only when warm.", "Fit a faster grade, and compare both times with the data sheets.");

    /// <summary>A board that limits the time from output enable, and a chip whose time is not known.</summary>
    public static readonly FindingRule OutputEnableUnknown = new("CW5025", FindingSeverity.Note, "Output-enable time not known",
        "A chip that is fast enough from its address may still be late from its output enable.", "Look the time up in the data sheet, often called tOE, and state it as `outputEnableNs` of the chip.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
    [
        Unknown, None, Contradiction, OtherPlatform, RomTooLarge, RegionWithoutSite, Unused, NotWiredFor, UnknownSite, NoPart, LargerThanSite, OwnPart,
        HalfWord, BadCapacity, UnevenBlocks, MoreLines, LineUsedTwice, OpenLine, NoInverter, TooSlow, OutputEnableUnknown,
    ];
}
