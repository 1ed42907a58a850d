using Cartwright.Headers;

namespace Cartwright.Platforms.Atari7800;

/// <summary>What the page of the platform says besides its tables.</summary>
internal static class Atari7800Facts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("a7800", "Atari 7800")
    {
        Aliases = ["atari-7800"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "a cartridge may use $0400-$047F, $0500-$17FF and $2800-$FFFF; in practice $4000-$FFFF",
            "the picture chip reads from the same bus",
            "8, 16, 32 and 48 KiB lie at the top: from $E000, $C000, $8000 and $4000 on",
            "$FF80-$FFF7 signature, $FFF8 region, $FFF9 signed area, $FFFA NMI, $FFFC reset, $FFFE IRQ, low byte first",
            "at power-on the console computes a digest from the first page of the signed area up to $FF7F",
        ],
        Saves =
        [
            "high-score cartridge: 4 KiB of ROM at $3000 and 2 KiB of RAM with a battery at $1000-$17FF, plugged between console and game",
            "memory key: a device at a controller port",
        ],
        Traps =
        [
            "NTSC consoles refuse a ROM without a signature that fits, and stay a 2600. Signatures are carried here, never made.",
            "Moving, filling or patching the signed area after signing breaks the signature.",
            "48 KiB in a chip of 64 KiB begin at 0x4000: at 0 nothing runs.",
            "48 KiB must not be repeated: boards see it as the upper three quarters, so the first 16 KiB of the chip are filled.",
            "The signed area must not hold what is switched: large games sign the pages from $C000, $D000, $E000 or $F000 only.",
            "With nine banks the one for $4000 is first in the file, not last.",
            "The container's size field may be wrong; the file's length less 128 counts.",
            "The container is on no chip.",
        ],
        Recognition =
        [
            "Exact: the A78 container: ATARI7800 at 1, and ACTUAL CART DATA STARTS HERE at 100.",
            "Structural: a size that some scheme has; at $FFF8 a high half of 0xF, at $FFF9 a low half of 3 or 7; a signature; all three vectors inside both ROM and signed area; and at the reset vector SEI, CLD or JMP.",
            "Candidate: the marks at $FFF8 and $FFF9 alone, and a reset vector from $4000 on. About one random block in 170 has them: the manifest must say.",
        ],
        Disputes =
        [
            "Maps of activision and absolute: from memory. With activision the processor's last 128 bytes are not the file's last ones but those before offset 0x1E000.",
            "PAL consoles do not check the signature: from memory.",
            "Signatures can be made by a public procedure; no step-by-step document was checked, so that it is not done here.",
        ],
        Sources = ["Atari 7800 wiki, ROM footer", "Atari 7800 bankswitching guide", "The SuperGame Format", "A78 Header Specification"],
    };
}
