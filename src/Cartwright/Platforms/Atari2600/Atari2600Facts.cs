using Cartwright.Headers;

namespace Cartwright.Platforms.Atari2600;

/// <summary>What the page of the platform says besides its tables.</summary>
internal static class Atari2600Facts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("a2600", "Atari 2600 (VCS)")
    {
        Aliases = ["atari-2600", "vcs"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "13 address lines: $1000-$1FFF is the cartridge, and is seen again at $3000, $5000 and so on up to $F000-$FFFF",
            "$00-$7F picture chip, $80-$FF RAM of the console, $280-$29F timer and ports",
            "$1FFA NMI (unused), $1FFC reset, $1FFE IRQ, low byte first",
            "the connector has no read/write line, no clock and no chip enable: address line 12, high, selects the cartridge",
            "no header and no checksum",
        ],
        Saves = ["none on the boards known here; a cartridge's RAM forgets"],
        Traps =
        [
            "The banks stand in the wrong order in the chip: they count in the order of the file, bank 0 first.",
            "Where the hardware leaves open which bank shows at power-on, every bank needs vectors and a jump to the start.",
            "A byte at a hot spot ($1FF8 and so on) that is used as data switches the bank while it is read.",
            "3f reacts to every write below $40, the picture chip's ordinary registers among them.",
            "Line 12 is high for the cartridge, and EPROMs are selected by a low line: without an inverter the chip answers at the wrong time.",
            "RAM on the cartridge hides the first bytes of each bank.",
            "2 KiB burned once into a larger chip leave 0xFF at the vectors: repeat it.",
            "4 KiB in a chip of 8, 16 or 32 KiB on a board without banks: repeat it.",
            "8 KiB in the chip of a board for 32 KiB: repeat it four times where the latch drives the upper lines; otherwise tie them low.",
            "A file of 4 KiB that accesses hot spots is one half of a set of two.",
            "The chip that scheme dpc needs is none that can be burned; its ROM and its data are two regions here. Files of 10495 bytes hold a table behind both.",
        ],
        Recognition =
        [
            "Structural: a size that some scheme has; in every 4 KiB a reset vector with bit 12 set, below $1FFA in 13 bits, to a byte other than 0x00 and 0xFF; a write to $02 that waits for the end of the line; and a start as nearly all games have it: 78 D8, or a switch of banks.",
            "Candidate: all that with another start. About one random block in fifty has it.",
            "The scheme is never taken from the bytes: they only serve to warn where they look like another.",
        ],
        Disputes =
        [
            "Bank at power-on of f8, f6, f4 and their like: undefined on hardware, the last by habit (from memory). Here: each bank that may show is checked, and a warning tells of those without a start.",
            "Bank at power-on of fa (2), fe, ua and 0840 (0): from memory. Here: never an error.",
            "RAM of 3e: up to 256 KiB, and 32 KiB by one table.",
            "Hot spots of e0, f0, ef, df, bf, fe and ua and the RAM's addresses of cv: from memory.",
        ],
        Sources = ["Bank-Switching, E7, WD pages", "2600 F8 bank switching"],
    };
}
