using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Programs;

/// <summary>Everything the reading of a program file may have to say, one row a kind of problem.</summary>
public static partial class ProgramFindings
{
    /// <summary>All rows, ascending by code.</summary>
    public static ImmutableArray<FindingRule> All =>
    [
        .. General,
        .. Records,
        .. Elf,
    ];

    /// <summary>Program file not found.</summary>
    public static FindingRule Missing { get; } = new(
        "CW2001",
        FindingSeverity.Error,
        "Program file not found",
        "Without it nothing can be placed in the ROM.",
        "Build the program first, or correct the file's path; it is taken from the manifest's folder.");

    /// <summary>Program file is empty.</summary>
    public static FindingRule Empty { get; } = new(
        "CW2002",
        FindingSeverity.Error,
        "Program file is empty",
        "An assembler or linker that fails often leaves a file of 0 bytes behind.",
        "Look at the messages of the program's own build and build it again.");

    /// <summary>Program file cannot be read.</summary>
    public static FindingRule Unreadable { get; } = new(
        "CW2003",
        FindingSeverity.Error,
        "Program file cannot be read",
        "The file is there, but the system does not hand out its bytes.",
        "Check its permissions, and that it is a file and not a folder.");

    /// <summary>Program file is too large.</summary>
    public static FindingRule TooLarge { get; } = new(
        "CW2004",
        FindingSeverity.Error,
        "Program file is too large",
        "No cartridge program comes near this size; it is probably another file.",
        "Check that the path names the program.");

    /// <summary>Name and content disagree.</summary>
    public static FindingRule NameMisleads { get; } = new(
        "CW2005",
        FindingSeverity.Note,
        "Name and content disagree",
        "Other tools go by the name and would read the file differently.",
        "Rename the file, or state its format.");

    /// <summary>Formatted file taken as raw bytes.</summary>
    public static FindingRule RawTakesText { get; } = new(
        "CW2006",
        FindingSeverity.Warning,
        "Formatted file taken as raw bytes",
        "The ROM would hold the file's own text or headers, not the program inside it.",
        "Remove the stated format so that it is recognised.");

    /// <summary>Not the stated format.</summary>
    public static FindingRule OtherFormat { get; } = new(
        "CW2007",
        FindingSeverity.Error,
        "Not the stated format",
        "Read as the stated format the file would give nothing sensible.",
        "Correct the stated format, or remove it so that it is recognised.");

    /// <summary>Address unit has no effect.</summary>
    public static FindingRule AddressUnitUnused { get; } = new(
        "CW2008",
        FindingSeverity.Warning,
        "Address unit has no effect",
        "Only Intel HEX and S-record files may count their addresses in words.",
        "Remove the address unit for this file.");

    /// <summary>No data in the file.</summary>
    public static FindingRule NoData { get; } = new(
        "CW2009",
        FindingSeverity.Warning,
        "No data in the file",
        "The file adds nothing to the ROM.",
        "Check that the sections meant for the ROM were written to it.");

    /// <summary>Addresses too far apart.</summary>
    public static FindingRule SpanTooLarge { get; } = new(
        "CW2010",
        FindingSeverity.Error,
        "Addresses too far apart",
        "One stray record far away would make an image of gigabytes.",
        "Remove the stray bytes (often a chip's fuses, or a section in RAM) from the output, or raise the largest span.");

    /// <summary>Different bytes for one address.</summary>
    public static FindingRule OverlapDiffers { get; } = new(
        "CW2011",
        FindingSeverity.Error,
        "Different bytes for one address",
        "Only one of them can be in the chip; which one would be chance.",
        "Correct the addresses in the linker script or source, so that sections do not overlap.");

    /// <summary>Bytes given twice.</summary>
    public static FindingRule OverlapSame { get; } = new(
        "CW2012",
        FindingSeverity.Warning,
        "Bytes given twice",
        "It does no harm now, but one of the two may change without the other.",
        "Let each address be written once.");

    /// <summary>Addresses count words.</summary>
    public static FindingRule AddressesCountWords { get; } = new(
        "CW2013",
        FindingSeverity.Error,
        "Addresses count words",
        "Tools for 16-bit processors may count addresses in words; read as byte addresses the records would overwrite one another.",
        "Set the address unit of this program to 2: byte address = 2 x address.");

    /// <summary>A list of serial numbers, not an image.</summary>
    public static FindingRule SerialList { get; } = new(
        "CW2014",
        FindingSeverity.Error,
        "A list of serial numbers, not an image",
        "Such files feed a production programmer one value for each chip; they are no program.",
        "Use the program file itself; serial numbers have their own place in a production run.");

    /// <summary>More findings of the same kind.</summary>
    public static FindingRule MoreOfTheSame { get; } = new(
        "CW2015",
        FindingSeverity.Note,
        "More findings of the same kind",
        "They are probably due to one cause.",
        "Correct the ones listed and try again.");

    // Rows about every program file.
    private static ImmutableArray<FindingRule> General =>
    [
        Missing,
        Empty,
        Unreadable,
        TooLarge,
        NameMisleads,
        RawTakesText,
        OtherFormat,
        AddressUnitUnused,
        NoData,
        SpanTooLarge,
        OverlapDiffers,
        OverlapSame,
        AddressesCountWords,
        SerialList,
        MoreOfTheSame,
    ];
}
