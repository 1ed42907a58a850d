using Cartwright.Headers;

namespace Cartwright.Platforms.Commodore;

/// <summary>What the page of the Commodore 128 says.</summary>
internal static class C128Facts
{
    public static PlatformFacts Facts { get; } = new("c128", "Commodore 128 function ROM")
    {
        Aliases = ["commodore-128"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "$8000-$BFFF the first 16 KiB, $C000-$FEFF the second (from memory); ROMs in the port and in the socket inside have the same form",
            "$8000 jump to the cold start, $8003 jump to the warm start, $8006 identifier, $8007 CBM",
            "container: behind its header a packet of up to 16 KiB for each half",
        ],
        Traps =
        [
            "/EXROM and /GAME stay high: with either low the machine starts as a C64 (from memory). A cartridge for its C64 mode is one for the C64.",
            "Both jumps must be there.",
            "With the identifier 00 the ROM is not started; with 01 it is before BASIC, with any other number after it.",
            "The two bytes of the load address left in front of the ROM.",
        ],
        Recognition =
        [
            "The container's signature `C128 CARTRIDGE` and two spaces.",
            "`4C` at 0 and 3 with addresses of $4000 and above, and `CBM`, plain or with bit 7 set, at 7; or the same behind the load address `00 80`.",
        ],
        Disputes =
        [
            "One note has CBM with bit 7 set; working images have it plain, which is written here, and both are read.",
            "The container's signature for this machine is from memory; what it has in place of the C64's lines is written as 0.",
            "That the second half is seen at $C000-$FEFF is from memory.",
        ],
        Sources =
        [
            "Function ROM identification (commodore-128.org)",
            "Cartridge header layout (commodore-128.org)",
            "CRT file format (codebase64.org)",
        ],
    };
}
