using Cartwright.Headers;

namespace Cartwright.Platforms.Vectrex;

/// <summary>What the page of the Vectrex says.</summary>
internal static class VectrexFacts
{
    public static PlatformFacts Facts { get; } = new("vectrex", "Vectrex")
    {
        BusWidth = 8,
        ByteOrder = ByteOrder.BigEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$0000-$7FFF cartridge, 32 KiB; of 64 KiB bit 6 of the VIA's port B chooses the half: 0 the lower one",
            "$0000 `g GCE`, a space, the year, 80; $000B address of the title music; $000D texts, each ended by 80; a 00 ends them, and the program follows at once",
            "$C800 RAM",
            "$D000 VIA",
            "$E000-$FFFF BIOS, with tunes for the title such as the one at $FD0D",
        ],
        Traps =
        [
            "The 80 behind the copyright or behind a text is missing.",
            "Lower-case titles: only the characters 20 to 5F are drawn.",
            "Code that does not follow the header's last 00 at once.",
            "A program is seldom as long as a chip: repeat it through the whole chip, or tie the chip's upper address lines.",
            "Boards for 64 KiB differ in the half they show at power-on.",
            "The year may be any: nothing reads it.",
        ],
        Recognition =
        [
            "Exact: `g GCE` at 0x0000, or 32 KiB before the end of a ROM of 64 KiB, with a year and texts that end as they should.",
            "Structural: the mark alone.",
        ],
        Disputes = ["The half of a ROM of 64 KiB that is seen at power-on: the upper one on common boards, as bit 6 is pulled high (from memory); `mapper` knows both."],
        Sources = ["Cartridge header in several public program sources (addresses not kept)", "from memory: the line that chooses a half"],
    };
}
