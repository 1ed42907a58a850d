using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Chips;

/// <summary>Everything there may be to say of a part that a manifest describes.</summary>
public static class OwnPartFindings
{
    /// <summary>A description in the manifest that cannot be.</summary>
    public static FindingRule BadDescription { get; } = new(
        "CW5570", Error, "Part described wrongly",
        "Width, supply and sectors decide how the chip is used and what an erase takes with it.",
        "Take them from the data sheet, or from the chip itself with `cartwright parts decode`.");

    /// <summary>A description of a part that the catalogue has.</summary>
    public static FindingRule NeedlessDescription { get; } = new(
        "CW5571", Warning, "Description of a known part",
        "The catalogue has a part of this name, and its entry is used.",
        "Leave the description out; or, if the chip is another one, give it a name the catalogue does not have.");

    /// <summary>No pin-out of the part in the package a manifest names is known.</summary>
    public static FindingRule NoPinOut { get; } = new(
        "CW5572", Warning, "Pin-out not known",
        "Lines cannot be named as pins of the chip.",
        "Name a package of `cartwright parts NAME`, or take the pins from the chip's data sheet.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } = [BadDescription, NeedlessDescription, NoPinOut];
}
