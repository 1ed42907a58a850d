using Cartwright.Headers;

namespace Cartwright.Platforms.Lynx;

/// <summary>What the page of the Lynx says.</summary>
internal static class LynxFacts
{
    /// <summary>The facts.</summary>
    public static PlatformFacts Facts { get; } = new("lynx", "Atari Lynx")
    {
        Aliases = ["atari-lynx"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "the cartridge lies at no address of the processor: a shift register selects one of 256 blocks (lines A12-A19 of the connector), a counter steps through it (A0-A10)",
            "128 KiB: 256 blocks of 512 bytes, counter A0-A8; the chip's A9-A16 meet the connector's A12-A19",
            "256 KiB: 256 blocks of 1024 bytes, counter A0-A9; the chip's A10-A17 meet A12-A19",
            "512 KiB: 256 blocks of 2048 bytes, counter A0-A10; the chip's A11-A18 meet A12-A19",
            "1 MiB: twice 256 blocks of 2048 bytes; the line AUDIN is the chip's A19",
            "0x000000 of the ROM: encrypted boot header, in frames of a count byte (0x100 less the number of blocks) and blocks of 51 bytes",
            "0x00019A of the ROM: directory of published cartridges, behind frames of 3 and 5 blocks (0x000200 behind 5 and 5); other loaders have theirs elsewhere",
            "a directory entry: block, offset in it, flag, load address, length: 1, 2, 1, 2 and 2 bytes",
        ],
        Saves =
        [
            "serial EEPROM 93C46 to 93C86, 128 bytes to 2 KiB, in words of 16 bits; the order of their bytes in files differs (from memory)",
        ],
        Traps =
        [
            "The boot header is encrypted and is never made or touched here: the program must carry it.",
            "A ROM filled up to the next size has blocks of another size, and its program finds nothing: state `blockSize`. A smaller ROM on a board with larger blocks is re-blocked for its chip.",
            "384 KiB are 512 KiB with blocks of 2048 bytes, not three quarters of anything.",
            "The 64 bytes of the container belong on no chip.",
            "An object with BS93 in its head is a program for RAM.",
        ],
        Recognition =
        [
            "The LYNX container: its four letters and a block size of 256, 512, 1024 or 2048 bytes.",
            "Without a container, only possible: the counts of the two frames of a published cartridge's boot header, and a cartridge's size. Homebrew loaders leave no such mark.",
        ],
        Sources =
        [
            "Cartridge headers (The Atari Lynx Book)", "Cartridge information, draft (The Atari Lynx Book)", "Lynx cartridge port pinouts", "Lynx cartridge pinout",
            "directory macro of a public homebrew program (address not kept)",
        ],
    };
}
