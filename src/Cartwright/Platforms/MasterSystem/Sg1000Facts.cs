using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What the page of the SG-1000 says.</summary>
internal static class Sg1000Facts
{
    public static PlatformFacts Facts { get; } = new("sg1000", "SG-1000 / SC-3000")
    {
        Aliases = ["sg-1000", "sc3000", "sc-3000"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$0000-$BFFF cartridge",
            "$C000-$C3FF work RAM, 1 KiB, repeated up to $FFFF; a cartridge may switch it off and take all 64 KiB",
            "$0000 start; $0038 interrupt in mode 1; $0066 pause button",
        ],
        Traps =
        [
            "There is no header and no checksum.",
            "Adapter cartridges have RAM at $2000-$3FFF; their images are blank there.",
            "The pause button interrupts the program at $0066, whatever it does.",
            "Nothing in the bytes tells a ROM of this console from one of the Master System without a header.",
        ],
        Sources = ["Memory Map, smspower.org", "SG-1000/SC-3000 expanded RAM, smspower.org", "ROM Header, smspower.org"],
    };
}
