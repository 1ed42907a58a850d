using Cartwright.Findings;

namespace Cartwright.Patching;

/// <content>Rows about BPS patches.</content>
public static partial class PatchFindings
{
    /// <summary>Patch is damaged.</summary>
    public static FindingRule BpsDamaged { get; } = new("CW7016", FindingSeverity.Error, "Patch is damaged",
        "The CRC-32 of the patch does not fit its bytes: some were changed or lost on the way.",
        "Get the patch again from where it came from.");

    /// <summary>Copy from outside the base.</summary>
    public static FindingRule BpsOutsideBase { get; } = new("CW7017", FindingSeverity.Error, "Copy from outside the base",
        "There are no bytes to copy; the patch was made by a faulty program.",
        "Ask the patch's author for another one.");

    /// <summary>Copy from bytes not made yet.</summary>
    public static FindingRule BpsAheadOfResult { get; } = new("CW7018", FindingSeverity.Error, "Copy from bytes not made yet",
        "A copy within the result must begin before the place it writes to; the patch was made by a faulty program.",
        "Ask the patch's author for another one.");
}
