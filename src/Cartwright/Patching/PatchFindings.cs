using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Patching;

/// <summary>Everything the applying and making of patches may have to say.</summary>
public static partial class PatchFindings
{
    /// <summary>Not a patch of a known format.</summary>
    public static FindingRule UnknownFormat { get; } = new("CW7001", FindingSeverity.Error, "Not a patch of a known format",
        "Only the first bytes tell the formats apart; file names are often wrong.",
        "Check that the path names a patch; unpack it first if it came in an archive.");

    /// <summary>Result too large.</summary>
    public static FindingRule TooLarge { get; } = new("CW7002", FindingSeverity.Error, "Result too large",
        "A few damaged or malicious bytes can ask for gigabytes; no cartridge comes near 128 MiB.",
        "Get the patch again from where it came from.");

    /// <summary>Patch ends too early.</summary>
    public static FindingRule EndsEarly { get; } = new("CW7003", FindingSeverity.Error, "Patch ends too early",
        "The file was cut short, or a length in it is damaged.",
        "Get the patch again from where it came from and compare the size of the file.");

    /// <summary>Number too long.</summary>
    public static FindingRule NumberTooLong { get; } = new("CW7004", FindingSeverity.Error, "Number too long",
        "No size or offset needs 64 bits; the patch is damaged.",
        "Get the patch again from where it came from.");

    /// <summary>Patch changes nothing.</summary>
    public static FindingRule ChangesNothing { get; } = new("CW7005", FindingSeverity.Note, "Patch changes nothing",
        "The image is probably patched already.",
        "Nothing, if it is meant.");

    /// <summary>Base has another size.</summary>
    public static FindingRule BaseSize { get; } = new("CW7006", FindingSeverity.Error, "Base has another size",
        "The patch was made for another image, or the image has a copier's prefix, or lacks one.",
        "Use the image the patch was made for; without a prefix where the sizes differ by just its length.");

    /// <summary>Base has another CRC-32.</summary>
    public static FindingRule BaseCrc { get; } = new("CW7007", FindingSeverity.Error, "Base has another CRC-32",
        "The patch was made for another revision, or the image stands in another byte order.",
        "Use the image the patch was made for.");

    /// <summary>Patch is applied already.</summary>
    public static FindingRule AppliedAlready { get; } = new("CW7008", FindingSeverity.Error, "Patch is applied already",
        "The image is the patch's own result.",
        "Use the image as it is, or start from the unpatched one.");

    /// <summary>Result has another size.</summary>
    public static FindingRule ResultSize { get; } = new("CW7009", FindingSeverity.Error, "Result has another size",
        "The patch contradicts itself.",
        "Get the patch again from where it came from.");

    /// <summary>Result differs from what the patch promises.</summary>
    public static FindingRule ResultSum { get; } = new("CW7010", FindingSeverity.Error, "Result differs from what the patch promises",
        "The base is not the one the patch was made for, or the patch is damaged.",
        "Compare size and CRC-32 of the base with what the patch's author states.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All =>
    [
        UnknownFormat, TooLarge, EndsEarly, NumberTooLong, ChangesNothing, BaseSize, BaseCrc, AppliedAlready, ResultSize, ResultSum,
        IpsEmptyRun, IpsOffsetReadsEnd, IpsTextAfterEnd, IpsOutOfReach, IpsCuts,
        BpsDamaged, BpsOutsideBase, BpsAheadOfResult,
        VcdiffVersion, VcdiffIndicator, VcdiffCompressed, VcdiffCodeTable, VcdiffNoWindow, VcdiffSegment, VcdiffLengths, VcdiffAddress,
    ];
}
