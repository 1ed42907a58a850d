using Cartwright.Headers;

namespace Cartwright.Platforms.Snes;

// What the page of the platform says besides its tables.
internal static class SnesFacts
{
    public static PlatformFacts Facts { get; } = new("snes", "Super Nintendo Entertainment System / Super Famicom")
    {
        Aliases = ["super-famicom", "sfc", "super-nintendo"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "lorom: $00-$7D and $80-$FF, $8000-$FFFF: 32 KiB of the ROM a bank; the lower halves of $40-$6F and $C0-$EF usually repeat the upper ones",
            "hirom: $40-$7D and $C0-$FF whole, $00-$3F and $80-$BF from $8000: 64 KiB of the ROM a bank",
            "exhirom: $C0-$FF the first 4 MiB, $40-$7D the rest; $80-$BF and $00-$3F from $8000 show the same",
            "exlorom: $80-$FF from $8000 the first 4 MiB, $00-$7D from $8000 the rest (from memory)",
            "$7E-$7F work RAM; 0x7E0000-0x7FFFFF of a ROM shows only through $3E and $3F from $8000 (exhirom), 0x7F0000-0x7FFFFF not at all (exlorom)",
            "$00:FFB0-$00:FFDF header, $00:FFE4-$00:FFFF vectors; the processor starts at $00:FFFC in emulation mode",
        ],
        Saves =
        [
            "RAM of 2, 8, 32, 64 or 128 KiB, with a battery or without; the file is the plain bytes in address order",
            "lorom: $70-$7D from $0000 to $7FFF, often again at $F0 and up",
            "hirom: $20-$3F or $30-$3F, and $A0-$BF, from $6000 to $7FFF; boards differ",
            "a 2 KiB chip repeats in a larger window, and longer files often repeat it",
        ],
        Traps =
        [
            "A copier prefix of 512 bytes left in front shifts everything; the header is then at 0x81C0.",
            "The complement is at the lower address, the checksum behind it.",
            "The checksum adds bytes, not words, over the ROM completed to a power of two by repeating its remainder; a copier prefix is never counted.",
            "The ROM size code is rounded up: 3 MiB is 4 MiB (code $0C).",
            "Above 4 MiB the first half of the ROM is banks $80-$FF; the header is in the second half.",
            "Fast ROM needs parts of 120 ns; parts of 200 ns crash now and then.",
            "A lorom image on a board wired for hirom does not start, nor the other way round; each 32 KiB bank must then stand in both halves of a 64 KiB block of a chip twice as large.",
            "A reset vector below $8000 does not start.",
            "RAM size code 1 is 2 KiB, code 0 is none.",
            "The checksum comes last: after title, version and every other change.",
            "Filling 2.5 MiB up to 4 MiB with $FF changes the checksum; repeating the remainder does not.",
            "A console runs a cart only if the cart's lock chip is for its region; the header's region byte does not change that.",
            "An interleaved HiROM image has a header that looks right at 0x7FC0, and its code at the wrong offsets.",
            "The extended header is ignored unless the developer ID is $33.",
            "A 3.3 V flash chip on the 5 V bus needs level translation on every line; a regulator alone stresses chip and console. See the data sheet.",
        ],
        Recognition =
        [
            "Structural: 8 points or more for a header at 0x7FC0, 0xFFC0, 0x407FC0 or 0x40FFC0. Checksum and complement that belong together give 4 (0000 and FFFF only 1), a right sum 6; a map mode that belongs to the place 3, another -2; a RESET vector from $8000 on 2, a lower one -4; an opcode there that programs begin with 2, one they do not -2; a ROM size code that fits the file 2; a possible RAM size, a known country, a title of letters and a game code of letters 1 each.",
            "Of several places the one with most points is taken; then the one whose sum is right, lorom for an odd multiple of 32 KiB, and the lower one.",
            "Images whose banks were taken apart, all upper halves first: found where 0x7FD5 holds a mode of HiROM and the header at its own place has more points.",
            "A prefix of 512 bytes in front is passed over where that gives more points.",
        ],
        Disputes =
        [
            "Order of complement and checksum: an older wiki page has them the other way round. Built here: complement at $FFDC, checksum at $FFDE.",
            "Checksum of SPC7110 carts of 3 and 5 MiB: one source counts 3 MiB twice and 5 MiB once. Built here: the plain rule for every ROM.",
            "Old texts sum in chunks of 4 Mbit. Built here: the byte sum over the completed ROM, which is the same for the common sizes.",
            "Save RAM of hirom: banks $20-$3F or $30-$3F. Neither is taken for ROM here.",
            "Map mode $22/$32: officially LoROM with S-DD1, informally ExLoROM (from memory). The header's place decides: the mapping exlorom writes and shows it as `exlorom`, the others as `sdd1`; `mapMode: lorom` is as good for exlorom.",
            "Header of ExLoROM: at 0x407FC0, with a copy at 0x007FC0 by some (from memory). Built here: at 0x407FC0; a copy is the program's own.",
            "Lower halves of $70-$7D and $F0-$FF repeat the ROM on lorom boards without save RAM. Not taken for ROM here.",
        ],
        Sources =
        [
            "fullsnes, cartridge chapters",
            "SNESdev Wiki, ROM header",
            "SNESdev Wiki, Memory map",
            "SNESdev Wiki, ExHiROM",
            "SnesLab, SNES ROM Header",
            "SNES cartridge connector notes",
            "NESdev forum, low voltage chip in snes cart",
        ],
    };
}
