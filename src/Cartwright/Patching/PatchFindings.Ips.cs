using Cartwright.Findings;

namespace Cartwright.Patching;

/// <content>Rows about IPS patches and the one check of BPS alone.</content>
public static partial class PatchFindings
{
    /// <summary>Run of no bytes.</summary>
    public static FindingRule IpsEmptyRun { get; } = new("CW7011", FindingSeverity.Error, "Run of no bytes",
        "An IPS run record repeats a byte at least once; the patch is damaged.",
        "Get the patch again from where it came from.");

    /// <summary>Record offset that reads as the end mark.</summary>
    public static FindingRule IpsOffsetReadsEnd { get; } = new("CW7012", FindingSeverity.Warning, "Record offset that reads as the end mark",
        "The offset 0x454F46 is spelled EOF, where many other programs stop and leave the rest of the patch out.",
        "Make the patch again with a program that avoids this offset, or ask for it as BPS.");

    /// <summary>Bytes after the end mark.</summary>
    public static FindingRule IpsTextAfterEnd { get; } = new("CW7013", FindingSeverity.Warning, "Bytes after the end mark",
        "Only the three bytes of a final length may follow; the rest was left out, which may be a part of the patch.",
        "Compare the result with what the patch's author states.");

    /// <summary>Out of reach of IPS.</summary>
    public static FindingRule IpsOutOfReach { get; } = new("CW7014", FindingSeverity.Error, "Out of reach of IPS",
        "IPS offsets have three bytes: 16 MiB.",
        "Make a BPS patch.");

    /// <summary>Patch cuts the image.</summary>
    public static FindingRule IpsCuts { get; } = new("CW7015", FindingSeverity.Note, "Patch cuts the image",
        "A final length after the end mark is an extension; a program that does not know it leaves the old bytes at the end.",
        "Nothing, if it is meant; BPS states the length in any case.");
}
