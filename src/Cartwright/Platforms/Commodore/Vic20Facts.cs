using Cartwright.Headers;

namespace Cartwright.Platforms.Commodore;

/// <summary>What the page of the VIC-20 says.</summary>
internal static class Vic20Facts
{
    public static PlatformFacts Facts { get; } = new("vic20", "VIC-20")
    {
        Aliases = ["vic-20", "vc-20"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$2000-$3FFF block 1, $4000-$5FFF block 2, $6000-$7FFF block 3, $A000-$BFFF block 5: a select for each (from memory)",
            "$0400-$0FFF three selects for RAM; $9800 and $9C00 I/O of the cartridge (from memory)",
            "$A000 cold start, $A002 warm start (RESTORE key), $A004 A0CBM",
            "container: behind its header a packet for each block",
        ],
        Traps =
        [
            "Only a cartridge in block 5 starts by itself; an image for another block has no mark.",
            "The machine jumps to the cold start before anything is set up: the program must call the KERNAL's set-up itself.",
            "The two bytes of the load address left in front of the ROM; files with them are commonly not filled up.",
            "The order of two blocks in one file is not settled: here the other block comes first and block 5 behind it.",
            "A ROM of 4 KiB is seen twice in its block; sets of two chips of 2 KiB have the lower half in the first.",
        ],
        Recognition =
        [
            "The container's signature `VIC20 CARTRIDGE` and a space.",
            "`41 30 C3 C2 CD` at 4, at 6 behind the load address `00 A0`, or at 0x2004.",
            "Without a mark: a load address in a block, a file that ends inside it, and jumps and calls into itself; that may be one.",
            "ROMs for other blocks that are started by hand have no mark at all and are not known.",
        ],
        Disputes =
        [
            "Selects of the blocks, and which of two blocks comes first in a file: from memory.",
            "The container's bytes that are lines on the C64 say nothing here; they are written as 0.",
        ],
        Sources =
        [
            "VIC-20 cartridge format (comp.sys.cbm)",
            "CRT file format (codebase64.org)",
        ],
    };
}
