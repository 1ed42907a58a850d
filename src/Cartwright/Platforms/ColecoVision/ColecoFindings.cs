using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>What the checks of this console may have to say.</summary>
public static class ColecoFindings
{
    /// <summary>No mark.</summary>
    public static readonly FindingRule NoMark = new("CW4370", FindingSeverity.Error, "No cartridge mark",
        "The BIOS starts a cartridge that begins with AA 55 or 55 AA, and no other.", "Put the program at offset 0, or free its first two bytes for the mark.");

    /// <summary>A start where no program is.</summary>
    public static readonly FindingRule StartNowhere = new("CW4371", FindingSeverity.Error, "Start address leads to no program",
        "The BIOS jumps there.", "State `header.start` as an address of the program, $8024 or more.");

    /// <summary>A start inside the header.</summary>
    public static readonly FindingRule StartInHeader = new("CW4372", FindingSeverity.Warning, "Start address inside the header",
        "The processor would run the header's own bytes.", "State `header.start` as an address of the program, $8024 or more.");

    /// <summary>A slot without code.</summary>
    public static readonly FindingRule BlankSlot = new("CW4373", FindingSeverity.Warning, "Blank restart slot",
        "A restart or interrupt runs on into the next slot.", "Take the slot out of `header`, or state it as `return`.");

    /// <summary>A slot that leads nowhere.</summary>
    public static readonly FindingRule SlotNowhere = new("CW4374", FindingSeverity.Warning, "Restart slot leads to no program",
        "A restart or interrupt crashes.", "State the slot as an address of the program, or as `return`.");

    /// <summary>No handler for the video interrupt.</summary>
    public static readonly FindingRule NoNmi = new("CW4375", FindingSeverity.Warning, "No handler for the video interrupt",
        "The first frame's interrupt runs through the header.", "State `header.nmi` as the address of a handler that reads the video chip's status.");

    /// <summary>A video interrupt that leads nowhere.</summary>
    public static readonly FindingRule NmiNowhere = new("CW4376", FindingSeverity.Warning, "Video interrupt leads to no program",
        "The first frame's interrupt crashes.", "State `header.nmi` as the address of the handler.");

    /// <summary>A title screen without text.</summary>
    public static readonly FindingRule NoTitle = new("CW4377", FindingSeverity.Warning, "No text for the title screen",
        "With AA 55 the BIOS shows what it finds at $8024 up to two strokes and a year.", "State `header.titleScreen`, or `header.mark` as `at-once`.");

    /// <summary>A title that is too long.</summary>
    public static readonly FindingRule LongTitle = new("CW4378", FindingSeverity.Warning, "Title too long for its screen",
        "About 60 letters are shown well.", "Shorten `header.titleScreen`.");

    /// <summary>Bytes that switch banks when read.</summary>
    public static readonly FindingRule HotSpots = new("CW4379", FindingSeverity.Note, "Bytes where reading switches banks",
        "Reading $FFC0-$FFFF chooses a bank, so nothing there can be read as data.", "Leave the last 64 bytes of each bank blank.");

    /// <summary>A banked cart whose start is doubtful.</summary>
    public static readonly FindingRule BankedStart = new("CW4380", FindingSeverity.Warning, "Banked cart may not start",
        "The last bank is seen at $8000 and the first one at $C000; header and start belong there.", "Put the header at $8000, the start of the last bank.");

    /// <summary>All rows, in order of code.</summary>
    public static ImmutableArray<FindingRule> All { get; } =
        [NoMark, StartNowhere, StartInHeader, BlankSlot, SlotNowhere, NoNmi, NmiNowhere, NoTitle, LongTitle, HotSpots, BankedStart];
}
