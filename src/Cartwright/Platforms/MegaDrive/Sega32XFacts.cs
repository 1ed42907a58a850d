
namespace Cartwright.Platforms.MegaDrive;

/// <summary>What the page of the 32X says.</summary>
internal static class Sega32XFacts
{
    public static PlatformFacts Facts { get; } = MegaDriveFacts.Facts with
    {
        Id = "32x",
        Name = "Mega Drive 32X / Super 32X",
        Aliases = ["sega-32x", "mega-drive-32x", "super-32x"],
        MemoryMap =
        [
            "$000000-$3FFFFF ROM, 4 MiB, as the 68000 sees it until the adapter is on",
            "$880000-$8FFFFF the ROM's first 512 KiB, with the adapter on",
            "$900000-$9FFFFF one of four pieces of 1 MiB, with the adapter on",
            "$02000000-$023FFFFF the ROM as the SH-2 processors see it (from memory)",
            "0x000000 vectors; 0x000100 the Mega Drive's header; 0x000200 table of jumps for exceptions",
            "0x0003C0 module header: what the SH-2 processors run (from memory)",
            "0x0003F0-0x0007FF start-up block, fixed to the byte; 0x000800 the 68000's program (from memory)",
        ],
        Traps =
        [
            "The start-up block is missing, cut short or altered: it is fixed to the byte. It is the user's to bring, is never made or shipped here, and is kept as it is.",
            "Whether the block is right cannot be told without another copy: give your own a second time with `\"as\": \"startUp\"`, and a difference stops the build.",
            "An entry other than 0x3F0: the adapter stays off.",
            "A program that cleans up 0x3C0-0x7FF as if it were free.",
            "What is checked of a Mega Drive ROM is checked of this one too, its header and checksum being the same.",
            .. MegaDriveFacts.Facts.Traps,
        ],
        Recognition =
        [
            "Exact or structural as for the Mega Drive, whose marks it bears, where two of three more are there: the system type SEGA 32X, the entry 0x3F0, the module name MARS CHECK MODE at 0x03C0.",
            "Candidate: the system type or the module name alone.",
        ],
        Disputes =
        [
            "Fields of the module header from 0x3D0 on and the exact reach of the start-up block: from memory, so nothing about them is an error.",
            .. MegaDriveFacts.Facts.Disputes,
        ],
        Sources = ["32X start-up code in two public program sources", "from memory: the SH-2 processors' view, the module header from 0x3D0 on", .. MegaDriveFacts.Facts.Sources],
    };
}
