using System.Collections.Immutable;
using Cartwright.Findings;
using static Cartwright.Findings.FindingSeverity;

namespace Cartwright.Slots;

/// <summary>Everything there may be to say of several games in one image.</summary>
public static class SlotFindings
{
    /// <summary>A game with more bytes than its slot.</summary>
    public static FindingRule TooLarge { get; } = new(
        "CW5901", Error, "Game larger than its slot",
        "Its end would lie in the next slot, where the lines that choose the game do not reach.",
        "Leave `size` out, or state the next power of two.");

    /// <summary>Two slots, or a slot and the menu, at the same bytes.</summary>
    public static FindingRule Collision { get; } = new(
        "CW5902", Error, "Slots collide",
        "Two games cannot have the same bytes.",
        "Leave `at` out to get the lowest free place, or state another.");

    /// <summary>A slot that no upper lines can select.</summary>
    public static FindingRule Misaligned { get; } = new(
        "CW5903", Error, "Slot not aligned to its own size",
        "The upper address lines choose the slot and the console drives the lower ones: that works only for a power of two at a multiple of itself.",
        "State a power of two as `size` and a multiple of it as `at`, or leave both out.");

    /// <summary>A file that does not look like a game of the cart's platform.</summary>
    public static FindingRule NotRecognised { get; } = new(
        "CW5904", Warning, "Game not recognised",
        "An image of another platform, or half an image, would not start from its slot.",
        "See what `cartwright examine` says of it; build or mend it first.");

    /// <summary>A switch on a line the image does not have.</summary>
    public static FindingRule LineOutside { get; } = new(
        "CW5905", Error, "Switch on a line the image does not need",
        "Half of the switch's positions would lie behind the end of the image.",
        "Name the lines that choose between slots: the highest of the image.");

    /// <summary>A game that no position of the switches starts.</summary>
    public static FindingRule NoPosition { get; } = new(
        "CW5906", Warning, "Game without a switch position",
        "With a directory a menu can start it; with switches alone it cannot be reached.",
        "Add a line, or put the game where a position begins.");

    /// <summary>A position that shows one game in one region and another in another.</summary>
    public static FindingRule Mixed { get; } = new(
        "CW5907", Warning, "Switch position mixes games",
        "The program of one game would run with the patterns of another.",
        "Give each switch the lines that choose the same game in every region.");

    /// <summary>A value that a directory field has no room for.</summary>
    public static FindingRule DoesNotFit { get; } = new(
        "CW5908", Error, "Directory field too small",
        "The menu would read another number or a cut title.",
        "Widen the field, state a larger `unit`, or shorten the title.");

    /// <summary>Slots counted from the start of a region whose programs lie at its end.</summary>
    public static FindingRule NeedsSize { get; } = new(
        "CW5909", Error, "Slots need the size of the region",
        "This platform's programs lie at the end of the region, so that a slot's offset follows from the size.",
        "State the region's `size`.");

    /// <summary>All rows, by code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [TooLarge, Collision, Misaligned, NotRecognised, LineOutside, NoPosition, Mixed, DoesNotFit, NeedsSize];
}
