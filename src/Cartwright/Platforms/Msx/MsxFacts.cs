using Cartwright.Headers;

namespace Cartwright.Platforms.Msx;

/// <summary>What the page of the MSX says.</summary>
internal static class MsxFacts
{
    public static PlatformFacts Facts { get; } = new("msx", "MSX")
    {
        Aliases = ["msx1", "msx2"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$0000-$3FFF page 0, $4000-$7FFF page 1, $8000-$BFFF page 2, $C000-$FFFF page 3; each page shows one slot",
            "the BIOS looks for a header at $4000 and $8000",
            "/CS1 $4000-$7FFF, /CS2 $8000-$BFFF, /CS12 both, /SLTSL every page of the slot",
            "with banks of 8 KiB: windows at $4000, $6000, $8000 and $A000; with banks of 16 KiB: at $4000 and $8000",
        ],
        Saves =
        [
            "ascii8: SRAM of 2, 8 or 32 KiB, chosen by the bit above the bank's bits, written at $8000-$BFFF only",
            "ascii16: SRAM of 2 or 8 KiB, chosen by bank $10",
            "files hold the SRAM's bytes in order; the chip is repeated within its window",
        ],
        Traps =
        [
            "Only the page with INIT is selected when the BIOS calls it: a program of 32 KiB selects its second half itself.",
            "A board of 32 KiB whose chip has its A14 on the bus's A14 shows the halves exchanged: take A15 there, or invert A14, or burn the two halves of 16 KiB exchanged.",
            "A board that uses /SLTSL alone shows a chip of 16 KiB in all pages; one that uses /CS1, in page 1.",
            "On a board of 32 KiB from $4000 on, a ROM for $8000 lies in the chip's upper half.",
            "STATEMENT, DEVICE and TEXT that hold anything else are called once INIT has returned.",
            "Bank bits above the ROM's size must read the same data: repeat the ROM in a larger chip.",
            "With konami-scc, 3F in $9000 is the sound chip and no bank.",
            "The header must lie in the bank that is seen at $4000 at power-on.",
        ],
        Recognition =
        [
            "Structural: AB at 0x0000 or 0x4000, and an INIT address in the cartridge's pages; or none, and a pointer for STATEMENT or TEXT. Not where plain text follows.",
            "Seven bytes of BLOAD's header in front are passed over (from memory).",
            "The mapper of a larger ROM shows in no byte: the manifest must say.",
        ],
        Disputes =
        [
            "Banks at power-on: one source has 0, 1, 2, 3 for all mappers; a newer one has 0 for ascii8 and ascii16 and leaves konami's upper windows open. Rely on the window at $4000 only.",
            "A ROM of 384 KiB for ascii16 exists whose board fixes $4000 to bank $0F or $17.",
            "Largest sizes of generic8, generic16, zemina8, zemina16 and msx-dos2: as many banks as eight bits count, by common practice.",
            "Which mapper a program is for, by the addresses it stores to: from memory.",
        ],
        Sources =
        [
            "MegaROM Mappers, msx.org",
            "Develop a program in cartridge ROM, msx.org",
            "Megabit ROM Cartridges, bifi.msxnet.org",
            "Cartridge thread, msxvillage.fr",
            "file/libmagic 5.44, magic/Magdir/msx",
        ],
    };
}
