using Cartwright.Findings;

namespace Cartwright.Patching;

/// <content>Rows about VCDIFF patches.</content>
public static partial class PatchFindings
{
    /// <summary>Another version of VCDIFF.</summary>
    public static FindingRule VcdiffVersion { get; } = new("CW7019", FindingSeverity.Error, "Another version of VCDIFF",
        "RFC 3284 describes version 0 alone.",
        "Ask for the patch in plain VCDIFF or BPS.");

    /// <summary>Indicator with unknown or contradicting bits.</summary>
    public static FindingRule VcdiffIndicator { get; } = new("CW7020", FindingSeverity.Error, "Indicator with unknown or contradicting bits",
        "What follows would be read wrongly.",
        "Get the patch again from where it came from.");

    /// <summary>Compressed sections.</summary>
    public static FindingRule VcdiffCompressed { get; } = new("CW7021", FindingSeverity.Error, "Compressed sections",
        "Secondary compression is no part of RFC 3284; each program has its own.",
        "Ask for the patch without secondary compression, or as BPS.");

    /// <summary>Own code table.</summary>
    public static FindingRule VcdiffCodeTable { get; } = new("CW7022", FindingSeverity.Error, "Own code table",
        "Hardly any patch brings one, and programs disagree on how it is stored.",
        "Ask for the patch with the default code table, or as BPS.");

    /// <summary>No window.</summary>
    public static FindingRule VcdiffNoWindow { get; } = new("CW7023", FindingSeverity.Warning, "No window",
        "The result is an empty file; the patch was probably cut short after its header.",
        "Compare the size of the patch with what its author states.");

    /// <summary>Segment outside its file.</summary>
    public static FindingRule VcdiffSegment { get; } = new("CW7024", FindingSeverity.Error, "Segment outside its file",
        "The patch was made for a longer base, or is damaged.",
        "Use the image the patch was made for.");

    /// <summary>Lengths that do not add up.</summary>
    public static FindingRule VcdiffLengths { get; } = new("CW7025", FindingSeverity.Error, "Lengths that do not add up",
        "The sections of a window fill it exactly and are used up exactly; the patch is damaged.",
        "Get the patch again from where it came from.");

    /// <summary>Copy from outside the window.</summary>
    public static FindingRule VcdiffAddress { get; } = new("CW7026", FindingSeverity.Error, "Copy from outside the window",
        "A copy begins in the segment or in what is made already, and one that begins in the segment ends there.",
        "Get the patch again from where it came from.");
}
