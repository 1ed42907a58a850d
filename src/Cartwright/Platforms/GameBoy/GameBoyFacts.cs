using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoy;

/// <summary>What the page of the Game Boy says.</summary>
internal static class GameBoyFacts
{
    public static PlatformFacts Facts { get; } = new("gb", "Game Boy / Game Boy Color")
    {
        Aliases = ["gbc", "game-boy", "game-boy-color"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$0000-$3FFF ROM bank 0",
            "$4000-$7FFF ROM bank the controller shows, 1 without one",
            "$8000-$9FFF video RAM",
            "$A000-$BFFF cartridge RAM, 8 KiB at once",
            "$C000-$DFFF work RAM",
            "$E000-$FDFF repeat of work RAM",
            "$FE00-$FEFF sprite memory",
            "$FF00-$FF7F registers",
            "$FF80-$FFFF high RAM and interrupt register",
            "$0000, $0008 to $0038: rst; $0040 VBlank, $0048 STAT, $0050 timer, $0058 serial, $0060 joypad",
            "$0100 entry; $0104-$014F header",
        ],
        Saves =
        [
            "SRAM of 8, 32, 64 or 128 KiB: plain bytes, bank 0 first",
            "MBC2: 512 half-bytes, one a byte, the high half undefined; packed files of 256 bytes exist; files of 8192 bytes hold the data in their first 512",
            "MBC7: 256 bytes of EEPROM, 128 words of 16 bits whose order differs between programs (from memory)",
            "MBC3 with clock: the RAM, then 44 or 48 bytes: ten little-endian 32-bit numbers (seconds, minutes, hours, days, day flags, and the five latched ones), then the Unix time in 32 or 64 bits",
            "HuC3 and TAMA5: RAM and records of their own",
        ],
        Traps =
        [
            "The header checksum covers version and licensee: any later edit of 0x134-0x14C stops the console until the checksum is corrected.",
            "The global checksum is stored high byte first, leaves out its own two bytes and covers the header checksum. No handheld checks it.",
            "A ROM size code larger than the file makes loaders refuse it or read past its end; the console does not care.",
            "A program of 40 KiB needs 64 KiB and the ROM size code 01.",
            "RAM size code 01 means none to some and 2 KiB to others; use 8 KiB.",
            "A title of 16 letters and a CGB flag cannot both be: the flag is the 16th byte.",
            "The SGB flag is ignored unless the old licensee is 33.",
            "MBC1 does not show banks $20, $40 and $60 at $4000.",
            "MBC5 can show bank 0 at $4000; MBC1, MBC2 and MBC3 show bank 1 instead: a ROM that works on one fails on another.",
            "A boot bitmap with one wrong byte in its second half works on colour models and hangs on the first model.",
            "A board that switches 32 KiB at once needs entry and header in every 32 KiB bank, or the next power-on may not start.",
            "A ROM of 8 MiB on a 16-bit flash part: check how the part's byte mode is wired.",
            "Saves of cartridges with a clock are 44 or 48 bytes longer than the RAM; MBC2 saves have 512 bytes, not 8192.",
            "A type without battery where there is one: saves vanish on some software, not on the board.",
            "A black box instead of the picture at power-on: FF at 0x104, erased flash or no contact. Check the wiring before the file.",
            "MBC1, MBC2 and MBC3 are not guaranteed in the double-speed mode of the colour model; MBC5 is.",
            "On an MBC1 board for several games of 256 KiB each game begins at bank $00, $10, $20 or $30 with a header of its own.",
            "The bus has 5 V: a 3.3 V flash part needs its address and control lines translated and a transceiver on its data lines; read both data sheets.",
        ],
        Recognition =
        [
            "Exact: the boot bitmap at 0x0104; also with the bytes of each word exchanged, in the last 32 KiB of an image of 64 KiB or more that is a power of two (an MMM01's menu), and at 0x40104, 0x80104 or 0xC0104 of 1 MiB (MBC1 for several games).",
            "Structural: a right header checksum at 0x014D, and legal codes for type, ROM and RAM at 0x0147-0x0149. It is the same with the bytes of each word exchanged, so that it does not show the order.",
            "Candidate: a jump at 0x0100, a title of letters, legal codes, and just the size the ROM code says: a program whose header was not finished.",
            "A prefix of 512 bytes in front is passed over where that makes the claim surer.",
        ],
        Disputes =
        [
            "ROM size codes 52, 53 and 54 stand in old lists only: not used here.",
            "RAM size code 01 is unused by some sources and 2 KiB by others: read as 2 KiB, with a warning.",
            "Four capitals or digits behind a title of 11 letters cannot be told from a title of 15: read as a title.",
            "Size of the MBC7's EEPROM, limits of HuC1 and HuC3, reset value of the MBC5's bank register: from memory.",
            "The OR-mask multicart (type 1B with destination E1) is marked unverified by its source.",
            "Extension of the exchange file: gbc when the CGB flag is set (80 and C0 alike), gb otherwise; common practice.",
            "Linkers give bank n the numbers from n x 0x10000 + 0x4000: common practice.",
        ],
        Sources =
        [
            "Pan Docs (The Cartridge Header; MBC chapters; MMM01; HuC; Memory Map; External Connectors; Power-Up Sequence)",
            "File-format wiki: GB (saves)",
            "Game Boy MBC5 flash cartridge PCB documentation",
            "file/libmagic 5.44, magic/Magdir/console",
        ],
    };
}
