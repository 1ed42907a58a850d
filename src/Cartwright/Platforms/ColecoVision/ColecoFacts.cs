using Cartwright.Headers;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>What the page of the ColecoVision says.</summary>
internal static class ColecoFacts
{
    public static PlatformFacts Facts { get; } = new("coleco", "ColecoVision")
    {
        Aliases = ["colecovision"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$0000-$7FFF the console's own: BIOS and RAM",
            "$8000-$9FFF, $A000-$BFFF, $C000-$DFFF, $E000-$FFFF cartridge, a chip select for each",
            "$8000 mark; $8002-$8009 pointers for the BIOS; $800A start; $800C-$8020 restart slots; $8021 video interrupt; $8024 title",
            "with banks: $8000-$BFFF the last bank, $C000-$FFFF any other, bank 0 at power-on (from memory)",
        ],
        Traps =
        [
            "Without code in the restart slots a restart crashes: blank slots are written as returns here.",
            "A video interrupt slot that points nowhere, or is zero: the first frame's interrupt runs through the header.",
            "With AA 55 the text at $8024 is shown: second line, first line, year; nothing ends it but the year's last digit.",
            "In the title's text byte 1D is the copyright sign, 1E and 1F are the halves of the trade mark sign (from memory): write them as such.",
            "A title of more than about 60 letters.",
            "A ROM that is not filled up is filled at its end, never at its start.",
            "With banks $FFC0-$FFFF must not be read as data.",
            "The file command takes a ROM that begins with 55 AA for an extension ROM of another computer.",
        ],
        Recognition =
        [
            "Structural: AA 55 or 55 AA at 0x0000 (from 48 KiB on, 16 KiB before the end), and a start address in the ROM that leads to something other than fill.",
        ],
        Disputes = ["Boards with banks: all that is said of them is from memory."],
        Sources =
        [
            "ColecoVision specifications (Complete Colecovision Specs)",
            "Coleco Vision cart info",
            "Start-up source of an open ColecoVision game",
            "Cartridge header technical information",
        ],
    };
}
