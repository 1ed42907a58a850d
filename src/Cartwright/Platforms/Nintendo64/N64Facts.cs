using Cartwright.Headers;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>What the page of the Nintendo 64 says.</summary>
internal static class N64Facts
{
    public static PlatformFacts Facts { get; } = new("n64", "Nintendo 64")
    {
        Aliases = ["nintendo-64"],
        BusWidth = 16,
        ByteOrder = ByteOrder.BigEndian,
        BusVolts = 3.3,
        MemoryMap =
        [
            "0x000000-0x00003F header",
            "0x000040-0x000FFF boot code, 4032 bytes that must suit the lock chip: your own, placed with `\"as\": \"bootCode\"`",
            "0x001000 program; stock boot codes copy 0x001000-0x100FFF to the entry address in RAM and start it there, the rest is for the program to load",
            "$80000000 RAM through the cache, $A0000000 RAM; 4 MiB, with the expansion 8 MiB (from memory)",
            "$A8000000-$AFFFFFFF save memory of the cartridge: SRAM and flash",
            "$B0000000-$BFBFFFFF ROM, 252 MiB; the largest sold had 64 MiB, and transfers reach further still",
        ],
        Saves =
        [
            "EEPROM of 512 bytes or 2 KiB on the serial lines: blocks of 8 bytes, plain bytes",
            "SRAM of 32 KiB at $A8000000: plain bytes, most significant first",
            "SRAM of 96 KiB in three banks at $A8000000, $A8040000, $A8080000 (from memory): banks one behind the other",
            "SRAM of 128 KiB; flash of 128 KiB at $A8000000, commands at $A8010000: most significant byte first",
            "Controller Pak of 32 KiB: in the controller, not in the cartridge",
            "The size proves no kind: 32 KiB is SRAM or a Controller Pak, 128 KiB is SRAM or flash.",
        ],
        Traps =
        [
            "A stock boot code sums 0x001000-0x100FFF: an image that ends before has undefined check words and hangs at the check.",
            "A chip of 1 MiB is too small: behind it the header with the check words would come again, inside the sum.",
            "Check words computed of an image with its bytes exchanged, or stored with the low byte first.",
            "Fill changed after the check words were computed: for small programs it is inside the sum.",
            "Check words of one chip with the boot code of another: seed and rule differ.",
            "6103 and 6106: the header holds the entry address raised by 0x100000 and 0x200000; here the address of the program is stated, and raised for you.",
            "7102: the header's entry is not read; programs start at $80000480.",
            "The customary bus times (37 12 40) with a slow chip: works warm, fails cold. Slow them down; they are not summed.",
            "A boot code with one byte changed: the console locks up. Its area is not free space.",
            "A chip file in the wrong word order gives 37 80 40 12 on the bus; most programmers in 16-bit mode want the bytes of each word exchanged (`images.wordOrder`).",
            "Save memory and clock in the last header byte count only with the unique code ED; otherwise the byte is a version.",
            "A title longer than 20 bytes runs into the controllers of the extension.",
            "NTSC and PAL consoles need the lock chip of their kind even for a program that runs on both.",
            "A small image repeated through the first MiB: the check words must be computed of the repeated bytes, not of fill.",
            "An open boot code is not a damaged one: its zero check words are right, and pasting a stock boot code over it leaves the program in a form that cannot be loaded.",
            "The lock chip shares the serial lines with EEPROM; an EEPROM cartridge without its EEPROM only fails to save.",
            "5 V parts must never be fitted: the bus has 3.3 V.",
        ],
        Recognition =
        [
            "Exact: the customary first word 80 37 12 40, or an entry address in RAM and a boot code whose CRC-32 or check value is that of a lock chip. Both in any of four orders: the console's, bytes exchanged, words exchanged, halfwords exchanged.",
            "The boot code tells the lock chip. Right check words are not asked for: many images do without them.",
        ],
        Disputes =
        [
            "Order of release, page size, pulse width and latency in bytes 1-3: two older pages have others; the console's own boot ROM is followed here.",
            "Entry address of the 6106: several pages name the 6103 only; both are raised here, as the boot codes do it.",
            "Filling of the title: spaces or zeros; spaces are written here, and both are read.",
            "Length of the title: 20 bytes, or 27 in older templates; 20 are written here, and the seven behind are kept and shown as text without ED.",
            "Smallest image and check words: given as rules for every image, and true for stock boot codes only.",
            "Order of save files: SRAM and flash files are found plain, with words of 32 bits reversed, and with bytes of 16 bits exchanged; nothing is guessed here.",
        ],
        Sources =
        [
            "N64brew Wiki, ROM Header", "N64brew Wiki, FAQ", "Disassembly of the N64 boot stages IPL1/2/3", "N64 CART Info", "Nintendo 64 memory map",
            "Boot stub: replacement for the 6102 boot code with a matching IPL2 check", "Read-me of an open IPL3 boot code",
        ],
    };
}
