using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.TestImages;

/// <summary>What can be wrong with a request for a test image.</summary>
public static class TestImageFindings
{
    /// <summary>No chip has that size.</summary>
    public static FindingRule BadSize { get; } = new(
        "CW9100", Error, "Size no chip has",
        "A test image names every address line of a chip, so it is as long as the chip: a power of two.",
        "Give the capacity of the chip in your hand, from 2KiB to 64MiB.");

    /// <summary>The board does not say how long its regions are.</summary>
    public static FindingRule NoSize { get; } = new(
        "CW9101", Error, "No size given",
        "The board takes regions of several sizes, and the image must be as long as the chips that are fitted.",
        "Add --size, as in --size 512KiB, or --size prg=256KiB for one region of several.");

    /// <summary>The bank size does not go with the region.</summary>
    public static FindingRule BadBankSize { get; } = new(
        "CW9102", Error, "Bank size does not fit",
        "A region holds whole banks, and each must have room for its number.",
        "Give the size of the mapper's banks with --bank-size, as in --bank-size 16KiB.");

    /// <summary>Nothing unused was found.</summary>
    public static FindingRule NothingUnused { get; } = new(
        "CW9103", Error, "Nothing to fill",
        "An image without long stretches of one value has no space that could be made telling; it is probably diagnosable as it is.",
        "Name the value of unused bytes with --value if it is not 0xFF, or a shorter stretch with --shortest.");

    /// <summary>The image belongs to no platform.</summary>
    public static FindingRule NoChecksums { get; } = new(
        "CW9104", Note, "Filled as a plain chip image",
        "No platform claims the file, so nobody knows where checksums stand in it.",
        "If it is a game's ROM, name the platform with --platform; if it is the image of one chip, put the checksums right in the whole ROM.");

    /// <summary>Reads of different lengths.</summary>
    public static FindingRule UnequalLengths { get; } = new(
        "CW9105", Error, "Reads of different lengths",
        "What a memory kept is counted byte by byte, against what was written.",
        "Read the whole memory, as many bytes as the test image has.");

    /// <summary>The memory forgot something.</summary>
    public static FindingRule NotKept { get; } = new(
        "CW9106", Error, "Memory did not keep its contents",
        "A save that is lost at the bench is lost at the player's too.",
        "Measure the cell, and the voltage at the memory's supply pin while the power is off; a lithium cell must never be charged or shorted. Then look at the supervisor and the enable of the memory.");

    /// <summary>The memory was wrong before the power was off.</summary>
    public static FindingRule WrongBefore { get; } = new(
        "CW9107", Error, "Wrong before the power went off",
        "What is not written right cannot be kept; this is a fault of the lines or of the memory itself.",
        "Find that fault first: `cartwright prove` compares the image with the read.");

    /// <summary>Neither a board nor a chip was named.</summary>
    public static FindingRule NoTarget { get; } = new(
        "CW9108", Error, "For which chip?",
        "A test image is made for the chips of a board, for a part, or for a chip of a size and width.",
        "Add --board, or --part, or --size with --width.");

    /// <summary>Another file was given for what was written.</summary>
    public static FindingRule NoMemoryImage { get; } = new(
        "CW9109", Error, "Not a memory test image",
        "Compared with another file, a memory would seem to have lost what it never held.",
        "Give the image first that `cartwright pattern memory` made, then the read made at once, then the later one.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [BadSize, NoSize, BadBankSize, NothingUnused, NoChecksums, UnequalLengths, NotKept, WrongBefore, NoTarget, NoMemoryImage];
}
