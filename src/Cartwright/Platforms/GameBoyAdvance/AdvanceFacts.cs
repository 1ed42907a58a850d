using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>What the page of the Game Boy Advance says.</summary>
internal static class AdvanceFacts
{
    public static PlatformFacts Facts { get; } = new("gba", "Game Boy Advance")
    {
        Aliases = ["game-boy-advance", "agb"],
        BusWidth = 16,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 3.3,
        MemoryMap =
        [
            "$08000000-$09FFFFFF ROM, 32 MiB, first set of wait states",
            "$0A000000-$0BFFFFFF the same ROM, second set of wait states",
            "$0C000000-$0DFFFFFF the same ROM, third set of wait states; serial EEPROM lies over its end",
            "$0E000000-$0E00FFFF SRAM or flash of 8 bits, 64 KiB at once",
            "$08000000 entry, an ARM branch; $08000004-$080000BF header; $080000C0 program",
        ],
        Saves =
        [
            "SRAM or FRAM, 32 KiB: plain bytes; marked in the image by SRAM_Vnnn",
            "serial EEPROM, 512 bytes or 8 KiB: blocks of 8 bytes, most significant bit first; marked by EEPROM_Vnnn",
            "flash, 64 KiB: plain bytes; marked by FLASH_Vnnn or FLASH512_Vnnn",
            "flash, 128 KiB in two banks: bank 0 first; marked by FLASH1M_Vnnn",
        ],
        Traps =
        [
            "The complement check covers the version byte: change the version first, then the check.",
            "Debug bits of 0x9C and key bits of 0x9E left from a debug image: some units start it, others do not.",
            "A save memory without its marker text: software that goes by the marker takes another kind.",
            "32 MiB with serial EEPROM: the last 256 bytes of the ROM answer as EEPROM.",
            "A 16-bit chip file with its bytes exchanged shows EA at byte 2 and starts nothing: the native order is that of programmers.",
            "5 V parts must never be fitted: the bus has 3.3 V.",
            "Some boards cross data lines: a chip written on the board reads right there, one written outside does not.",
        ],
        Recognition =
        [
            "Exact: the boot bitmap at 0x04; or a branch at 0x00, the fixed byte 0x96 at 0xB2 and a right complement check at 0xBD. Also with the bytes of each word exchanged.",
            "Candidate: a branch at 0x00 that leads behind the header and stays in the file: a program whose header was not filled in.",
        ],
        Disputes =
        [
            "EEPROM save files: some keep the 8 bytes of each block as sent, some reversed. The image does not show which.",
        ],
        Sources = ["GBATEK, GBA chapters", "crt0.S v1.28, GBA start-up file", "HwB: Game Pak", "EEPROM save types, forum"],
    };
}
