using Cartwright.Headers;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>What the Mega Drive's page says.</summary>
internal static class MegaDriveFacts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("md", "Mega Drive / Genesis")
    {
        Aliases = ["mega-drive", "genesis"],
        BusWidth = 16,
        ByteOrder = ByteOrder.BigEndian,
        BusVolts = 5.0,
        MemoryMap =
        [
            "$000000-$3FFFFF ROM, 4 MiB, selected by /CE_0",
            "$000000-$0000FF 64 vectors of 32 bits, the program's own: stack, entry, exceptions, interrupts (level 6 at $78 is the vertical blank)",
            "$000100-$0001FF header",
            "$200000-$3FFFFF save memory where the cartridge has any; it may lie over the ROM",
            "$400000-$7FFFFF expansion side; no cartridge ROM (from memory)",
            "$A00000-$A0FFFF Z80 (from memory)",
            "$A13000-$A130FF cartridge registers, selected by /TIME",
            "$A130F1 save memory: bit 0 shows it, bit 1 protects it from writing (common practice)",
            "$A130F3-$A130FF, odd bytes: the page in each 512 KiB slot from $080000 on; slot 0 always shows page 0",
            "$C00000-$DFFFFF video processor (from memory)",
            "$FF0000-$FFFFFF work RAM, 64 KiB",
        ],
        Saves =
        [
            "8-bit RAM on D7-D0 at odd addresses, with a battery: the usual. 8 KiB is $200001-$203FFF, 32 KiB is $200001-$20FFFF; the chip's A0 is VA1.",
            "8-bit RAM on D15-D8 at even addresses: 8 KiB is $200000-$203FFE.",
            "16-bit RAM: 64 KiB is $200000-$20FFFF.",
            "Serial EEPROM of 128 bytes to 8 KiB, at $200001; which bits carry clock and data depends on the board (from memory).",
            "Flash: the game rewrites sectors of its own chip; they are left erased.",
            "A save file is packed (the chip's bytes) or expanded (every second byte filler); a chip programmer needs the packed one.",
        ],
        Traps =
        [
            "Even and odd chip exchanged, or the bytes not swapped for a programmer of little-endian words: the console shows nothing. The upper chip (D15-D8) has the even bytes, counted from 0.",
            "A checksum over the padded chip while romEnd holds the end of the unpadded ROM.",
            "A checksum stored with its low byte first.",
            "romEnd holding the size instead of the size less one, or a linker's default.",
            "A save memory block of odd type with an even start.",
            "Zeros instead of spaces behind header texts.",
            "A ROM of more than 2 MiB with save memory fixed at $200000: the upper half cannot be read.",
            "A lone E in the region taken for a hexadecimal digit: it is Europe.",
            "A save chip programmed with an expanded file.",
            "Trailing 0xFF trimmed away, so that romEnd points behind the file.",
            "A 3.3 V flash chip on this 5 V bus: use a level shifter or a part that its data sheet calls 5 V tolerant.",
        ],
        Recognition =
        [
            "Exact: SEGA at 0x0100, or at 0x0101 behind a space; also with the bytes of each word exchanged, and behind a prefix of 512 bytes.",
            "Copier's blocks: behind the prefix, blocks of 16 KiB with odd and even bytes apart, which show SEGA once brought together; exact where the prefix has its mark AA BB at 8, structural where not.",
            "Structural: all odd bytes before all even ones, which show SEGA once brought together.",
            "Candidate: every second letter of a known system type at 0x0080: one chip of two, and the file of the other is needed.",
        ],
        Disputes =
        [
            "Serial type of education titles: AI or A1. AI is the documented choice here; both are accepted.",
            "High byte of the work RAM range: 00, E0 and FF are seen; 00 is written and only bits 23-0 are compared.",
            "Order of the halves in a copier's block: a format note says even bytes first, decoders and images say odd first; odd first is built in.",
            "Content of the modem field: sources agree on MO at its start only; it is plain text here.",
            "Region E alone: Europe for most readers; 8 is the spelling of the new style that nobody can mistake.",
        ],
        Sources =
        [
            "ROM header reference", "ROM Cartridge Data", "Genesis format table", "Cartridge slot", "Going beyond 4MB", "SMD file format information",
            "Sega Megadrive cartridge pinout", "Mega Drive Cartridge", "Genesis vector and header table", "Copier 512-byte header description",
        ],
    };
}
