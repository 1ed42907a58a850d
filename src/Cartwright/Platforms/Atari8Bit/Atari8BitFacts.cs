using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>What the page of the computers says besides its tables.</summary>
internal static class Atari8BitFacts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("a8bit", "Atari 8-bit computers (400, 800, XL, XE, XEGS)")
    {
        Aliases = ["atari-8bit", "atari-800", "atari-xl"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$A000-$BFFF 8 KiB in the left slot, $8000-$BFFF 16 KiB",
            "$8000-$9FFF 8 KiB in the right slot, which only the 800 has",
            "$D500-$D5FF registers of the cartridge",
            "$BFFA run address, $BFFC presence, $BFFD options, $BFFE init address; in the right slot $9FFA and so on; low byte first",
        ],
        Saves = ["none on the boards known here"],
        Traps =
        [
            "The byte at $BFFC is not 0x00, and the computer takes the slot for empty.",
            "The ROM's end is not at $BFFF: 4 KiB belong at $B000.",
            "The bank an XEGS cartridge starts in is the last one.",
            "16 KiB burned with their halves exchanged.",
            "The container is on no chip.",
        ],
        Recognition =
        [
            "Exact: the CART container with a number from 1 to 255 that is none of the Atari 5200's: CART, and the number high byte first at 4. A wrong checksum is told and changes nothing.",
            "Candidate: a size that some scheme has, and in the last six bytes 0x00 as presence, run and init address inside the ROM. About one random block in a hundred has that: the manifest must say.",
        ],
        Disputes =
        [
            "Bits of the option byte: from memory.",
            "Maps of xegs, switchable-xegs, megacart, williams and oss: from memory. Which bank of megacart and williams shows at power-on is not known here, and a warning tells of banks without a trailer.",
            "oss: which 4 KiB of the file stay at $B000 is not known here; its two boards have numbers of their own in the container, so that `cartType` must be stated.",
            "The container's list of numbers goes on after 34; a number without a name can be stated raw.",
            "The XL and XE notice an exchanged cartridge by a sum of their own (from memory); nothing of it is stored in the ROM.",
        ],
        Sources = ["Memory map extract, cartridge B", "CAR", "CAR extension page", "Cartridge types thread, abbuc.de forum"],
    };
}
