using Cartwright.Headers;

namespace Cartwright.Platforms.PcEngine;

/// <summary>What the page of the PC Engine says.</summary>
internal static class PcEngineFacts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("pce", "PC Engine / TurboGrafx-16")
    {
        Aliases = ["pc-engine", "turbografx-16", "tg16"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "256 banks of 8 KiB, seen through eight mapping registers at $0000-$FFFF",
            "banks 00-7F card, 1 MiB; up to 256 KiB repeat at every power of two",
            "card of 384 KiB: banks 00-1F the first 256 KiB, 20-3F the same again, 40-4F the last 128 KiB, repeated to 7F (public programs)",
            "card of 768 KiB: banks 00-3F the first 512 KiB, 40-5F the last 256 KiB, repeated to 7F (from memory)",
            "card of 2.5 MiB: banks 00-3F fixed, 40-7F one of four pages of 512 KiB (public programs)",
            "bank F7 backup RAM of the console, F8-FB work RAM, FF registers",
            "reset: bank 0 at $E000-$FFFF; vectors at 1FF6 IRQ2 and BRK, 1FF8 IRQ1, 1FFA timer, 1FFC NMI (from memory), 1FFE reset",
        ],
        Saves =
        [
            "Cards have no save memory; one special card has 32 KiB of RAM in banks 40-43 (public programs).",
            "The console's backup RAM of 2 KiB belongs to the console; its file begins with HUBM (from memory).",
        ],
        Traps =
        [
            "The Japanese slot has D0-D7 where the US slot has D7-D0: a board wired for one and used in the other needs its chip file bit-reversed, once. The ROM itself always stays in the processor's order.",
            "A board with a region switch or crossed tracks needs no reversal. The rule: reverse when the chip's D0 ends on the processor's D7.",
            "384 KiB filled up to 512 KiB, or in a chip whose top line is not A19: the upper data are in bank 20 or 30 instead of 40.",
            "A copier prefix of 512 bytes left in the file.",
            "768 KiB taken for three equal chips.",
        ],
        Recognition =
        [
            "Length: whole banks of 8 KiB, or 512 bytes more, which are a copier prefix.",
            "The reset vector points into bank 0, and the code there begins with SEI and CSH and sets the mapping registers: certain. One of the two marks alone: likely; CSH alone: possible.",
            "The same with the bits of each byte reversed: an image for the slot of the other region.",
        ],
        Disputes =
        [
            "Pins 3 and 33 of the card: one pinout has A18 and A19, another A19 and A18. Check with a meter before trusting either; boards up to 256 KiB are not affected.",
            "Pin 24: called chip select in one pinout and A20 in another; A20 is low for banks 00-7F, so both are the same signal.",
        ],
        Sources =
        [
            "HuCard pinout, Japanese and US (liquidbox.net)", "HuCard (hardware book)", "Copier 512-byte header description",
            "bank maps and page select, public programs (addresses not kept)",
        ],
    };
}
