using Cartwright.Headers;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>What the page of the WonderSwan says.</summary>
internal static class SwanFacts
{
    public static PlatformFacts Facts { get; } = new("ws", "WonderSwan / WonderSwan Color")
    {
        Aliases = ["wonderswan", "wsc", "wonderswan-color"],
        BusWidth = 16,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 3.3,
        MemoryMap =
        [
            "ROM of 8 or 16 data lines; on 16 lines the even byte is on D0-D7. Mapper 2001 reaches 16 MiB, mapper 2003 64 MiB.",
            "$00000-$0FFFF internal RAM",
            "$10000-$1FFFF cartridge RAM, bank by port C1",
            "$20000-$2FFFF ROM, bank of 64 KiB by port C2",
            "$30000-$3FFFF ROM, bank of 64 KiB by port C3",
            "$40000-$FFFFF ROM, the top 768 KiB of the MiB that port C0 selects; after power-on the end of the ROM",
            "$FFFF0 reset: the last 16 bytes of the ROM, which are the footer",
        ],
        Saves =
        [
            "SRAM of 32, 128, 256 or 512 KiB: plain bytes",
            "serial EEPROM of 128 bytes, 1 KiB or 2 KiB: words in order of address, low byte first (from memory)",
        ],
        Traps =
        [
            "The ROM lies at the end of the chip: started at its beginning, nothing is found at reset.",
            "The checksum covers the fill in front: fill first, then sum. Whole 64 KiB of 0xFF leave it as it was.",
            "Size code 02 left on a smaller image says 512 KiB.",
            "A mirrored chip is not summed again: each copy keeps the footer of the original size.",
            "64 KiB have no size code: 128 KiB are made of them, with 0xFF in front.",
            "5 V parts do not fit: bus and supply have 3.3 V.",
        ],
        Recognition =
        [
            "The last 16 bytes: a far jump into the ROM, codes that exist, and a length of whole 64 KiB. With a right checksum certain, without it likely: most homebrew leaves the checksum 0.",
        ],
        Disputes =
        [
            "Save code 01: older tables say 8 KiB, newer work 32 KiB; it is never written here.",
            "Bus width: an older table has it in bit 1 with inverse meaning; bit 2 agrees with the run-time register, and is used here.",
            "Size codes 00, 01, 0A and 0B rest on one source.",
        ],
        Sources = ["ROM header (ws.nesdev.org)", "Mapper (ws.nesdev.org)", "WonderSwan header template (datacrystal.tcrf.net)"],
    };
}
