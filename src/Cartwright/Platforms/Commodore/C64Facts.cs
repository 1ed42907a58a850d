using Cartwright.Headers;

namespace Cartwright.Platforms.Commodore;

/// <summary>What the page of the Commodore 64 says.</summary>
internal static class C64Facts
{
    public static PlatformFacts Facts { get; } = new("c64", "Commodore 64")
    {
        Aliases = ["commodore-64"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$8000-$9FFF ROML; $A000-$BFFF or $E000-$FFFF ROMH; $DE00-$DEFF and $DF00-$DFFF I/O of the cartridge",
            "/EXROM low, /GAME high: ROML at $8000; both low: ROMH at $A000 too",
            "/EXROM high, /GAME low (Ultimax): ROML at $8000, ROMH at $E000 in place of the KERNAL, RAM at $0000-$0FFF only",
            "both high: no cartridge",
            "$8000 cold start, $8002 warm start, $8004 CBM80; as Ultimax no mark, but the processor's vectors at $FFFA",
            "banks: an address without a bank means bank 0; on boards of type 32 ROML of bank n is n:8000, ROMH n:A000",
            "container: behind its header a packet for each bank or half: CHIP, length with these 16 bytes, kind, bank, address, size, then the bytes; the most significant byte first; a packet that is not there is FF",
        ],
        Saves = ["boards of type 32 have flash that the game can write to, and 256 bytes of RAM at $DF00"],
        Traps =
        [
            "The KERNAL jumps through $8000 before anything is set up: the program must set up the machine itself.",
            "The two bytes of the load address left in front of the ROM.",
            "ROML and ROMH exchanged in a chip of 16 KiB: ROML is the lower half.",
            "Levels of /EXROM and /GAME taken for switches: low is asserted. A line left open floats.",
            "A ROM of 8 KiB on a board with /GAME low: BASIC is hidden under what the upper half happens to hold.",
            "On boards of type 32 the processor starts in ROMH of bank 0: a start-up routine and vectors must be there, and the container's lines are high and low.",
            "Some boards of type 19 stay off until reset once they were switched off.",
            "Without a KERNAL, as Ultimax, the RESTORE key comes through $FFFA.",
        ],
        Recognition =
        [
            "The container's signature `C64 CARTRIDGE` and three spaces.",
            "`C3 C2 CD 38 30` at 4, or at 6 behind the load address `00 80`.",
            "Without either, 4, 8 or 16 KiB whose last six bytes are vectors into $E000-$FFF9 may be one for Ultimax.",
        ],
        Disputes =
        [
            "The container's bytes for /EXROM and /GAME: its description says 0 is inactive, its own example and all files have levels, 0 for low, and the file command reads them so; levels are written here.",
            "ROMH of boards of type 32 is given $A000 in some containers and $E000 in others; both mean the same chip, and $A000 is written here.",
            "Type 15 chooses its bank by a write and type 17 by a read: both from one family of tables.",
            "Lines of boards of type 5 with 32, 128 and 512 KiB: all banks are at $8000, so /EXROM low and /GAME high are written; state `exrom` and `game` where the board differs.",
        ],
        Sources =
        [
            "CRT file format (codebase64.org)",
            "Cartridge-type tables restating the CRT file format",
            "Board for CRT types 5 and 19 (8bitchip.info)",
            "Read-me of an open board for types 5 and 19",
            "Register equates of boards of type 32",
        ],
    };
}
