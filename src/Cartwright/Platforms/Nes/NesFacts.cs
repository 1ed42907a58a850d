using Cartwright.Headers;

namespace Cartwright.Platforms.Nes;

/// <summary>What the page of the platform says besides its tables.</summary>
internal static class NesFacts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("nes", "Nintendo Entertainment System / Famicom")
    {
        Aliases = ["famicom", "fc"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "CPU $0000-$1FFF work RAM of the console",
            "CPU $2000-$401F registers of the console",
            "CPU $4020-$5FFF expansion, mostly free for mappers",
            "CPU $6000-$7FFF RAM of the cartridge, kept by a battery or not",
            "CPU $8000-$FFFF PRG; 16 KiB are seen twice",
            "CPU $FFFA, $FFFC, $FFFE the vectors NMI, RESET and IRQ, low byte first",
            "PPU $0000-$1FFF CHR, ROM or RAM, on a bus of its own",
            "PPU $2000-$2FFF nametables",
        ],
        Saves =
        [
            "battery RAM: mostly 8 KiB (2 to 32 KiB; MMC5 64 KiB and more) at $6000-$7FFF, in banks where it is larger; bank 0 first",
            "MMC6: 1 KiB inside the mapper at $7000-$7FFF",
            "N163: 128 bytes inside the mapper, sometimes appended to the RAM's 8 KiB",
            "serial EEPROM 24C01 or 24C02: 128 or 256 bytes",
            "PRG flash that the console rewrites: sectors of 4 KiB, a part of PRG",
        ],
        Traps =
        [
            "Writing the exchange file with its 16-byte header to a chip shifts everything by 16, and nothing runs.",
            "PRG and CHR are two chips; both in one, or the two changed over, show garbage at best.",
            "On a mapper with a fixed last bank the bank with the vectors is the last of PRG and of the chip.",
            "A 64 KiB PRG filled up behind to a 512 KiB chip leaves nothing but fill in the fixed last bank: repeat it, or place it at the end.",
            "Boards that switch all 32 KiB start in any bank: without vectors and a start routine in each the cart starts on some power-ups only.",
            "On boards with bus conflicts the value written must stand in ROM at the address written.",
            "CHR ROM for a board with CHR RAM, or the reverse, shows blank or garbage tiles.",
            "Vertical mirroring is a horizontal arrangement of nametables and a 1 in the header; the jumper on the board must agree.",
            "Text in bytes 7 to 15 of an old header gives a wrong mapper, often one 64 too high.",
            "In NES 2.0 CHR RAM must be declared, the exponent form of sizes is for sizes without a plain form, and save RAM needs the battery flag.",
            "The 32-pin mask ROMs of old boards do not have the pins of EPROMs: one in their socket shorts A16 to its output enable.",
            "PRG of 24 or 40 KiB is legal and no chip has that size.",
            "Where the console rewrites PRG, a read-back differs in the sectors with progress.",
            "PRG larger than customary boards take runs on permissive software and needs a board with enough latch bits.",
        ],
        Recognition =
        [
            "Exact: a container, which begins with 4E 45 53 1A; also behind a copier's prefix of 512 bytes. Sizes that do not add up to the file's are told and change nothing.",
            "Candidate: PRG without a container, 16 KiB to 1 MiB in whole 8 KiB, with RESET from $8000 to $FFF9, NMI from $8000 or from $0200 to $07FF, and at RESET an opcode programs begin with. About one random block in a hundred has all that, and CHR behind PRG hides it: the manifest must say what the file is.",
        ],
        Disputes =
        [
            "MMC1 at power-on: some tests say the last bank, others say fragile. Here: the vectors must be in the last 16 KiB, and a warning tells of each 32 KiB without them.",
            "CPROM: 4F+4 or 4+4F. Here: the lower half is fixed (from memory).",
            "UN1ROM: 128 or 256 KiB. Here: 256, which is electrically possible.",
            "NES 2.0 byte 13: older texts list the values 1, 6, 7 and C of the Vs. System's picture chip, and 4 as VT01 monochrome. Here: the current table.",
            "CHR RAM of an iNES header without CHR: 8 KiB are assumed, whatever the mapper.",
        ],
        Sources =
        [
            "NESdev Wiki, NES 2.0",
            "NESdev Wiki, INES",
            "NESdev Wiki, NES 2.0 submappers",
            "NESdev Wiki, List of mappers",
            "NESdev Wiki, Comparison of Nintendo mappers",
            "NESdev Wiki, iNES mappers 028, 030, 031, 071, 111 and 218",
            "NESdev Wiki, Mask ROM pinout",
        ],
    };
}
