using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>What the page of the 5200 says besides its tables.</summary>
internal static class Atari5200Facts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("a5200", "Atari 5200")
    {
        Aliases = ["atari-5200"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$4000-$BFFF the cartridge, 32 KiB",
            "$BFE8-$BFFB title, $BFFC-$BFFD year, $BFFE start address, low byte first",
            "at power-on the console shows logo, title and year and goes to the start address",
            "4, 8 and 16 KiB in one chip are seen again and again up to $BFFF",
            "16 KiB in two chips: the first 8 KiB at $4000 and $6000, the second at $8000 and $A000",
        ],
        Saves = ["none on the boards known here"],
        Traps =
        [
            "16 KiB for one chip on a board for two, or the other way round: nothing in the ROM says which it is.",
            "16 KiB for two chips in one chip of 32 KiB: it holds the first 8 KiB twice, then the second twice.",
            "A title in ASCII shows other letters: the console's codes are ASCII less 0x20.",
            "Year bytes of 0x00 show garbage; the game starts all the same.",
            "0xFF at $BFFD, as in an erased chip, means no title screen.",
            "The container is on no chip.",
        ],
        Recognition =
        [
            "Exact: the CART container with a number of this console's: CART, and the number high byte first at 4. A wrong checksum is told and changes nothing.",
            "Candidate: a size that some scheme has, a start at $BFFE from $4000 to $BFFF, and at $BFFC two digits of a year, or 0xFF at $BFFD; where the end is no trailer of the computers' cartridges. The manifest must say.",
            "Nothing tells 16 KiB in one chip from 16 KiB in two, except the addresses of jumps.",
        ],
        Disputes =
        [
            "Order of the two chips, and the map of the 40 KiB board: from memory.",
            "$BFE7, a mark for PAL that a later console tests: from memory and not verified. It is the program's own and never written unless stated.",
            "Boards of 64 and 128 KiB are later ones of no common kind and are not known here.",
        ],
        Sources = ["public program sources (title, year, start)", "CAR", "CAR extension page"],
    };
}
