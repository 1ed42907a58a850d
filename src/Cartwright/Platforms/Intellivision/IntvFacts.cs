using Cartwright.Headers;

namespace Cartwright.Platforms.Intellivision;

/// <summary>What the page of the Intellivision says.</summary>
internal static class IntvFacts
{
    public static PlatformFacts Facts { get; } = new("intv", "Intellivision")
    {
        Aliases = ["intellivision"],
        BusWidth = 16,
        ByteOrder = ByteOrder.BigEndian,
        BusVolts = 5,
        MemoryMap =
        [
            "addresses count words of 16 bits, of which most ROMs have 10; the bus carries addresses and data over the same lines",
            "$5000-$6FFF the ROM's first 8 K-words, $D000-$DFFF the next 4, $F000-$FFFF the last 4 (the usual map, from memory)",
            "$5000-$5013 universal data block: six pointers of two words each, flags, border, colors",
            "$5014 year and title in the usual form; the program starts behind them",
        ],
        Traps =
        [
            "Each word has its high byte first; two 8-bit chips hold D15-D8 and D7-D0.",
            "The bus is multiplexed: plain chips need a latch for the address, or logic that holds it.",
            "A pointer of the header is two words, with a byte in each: the low one first.",
            "ROMs of 10 bits read with the upper lines left open: mask each word with 03FF.",
            "Addresses and maps count words, files and chips bytes.",
            "Programs that do without the EXEC put code at other addresses such as $7000, or take over by a flag: the usual map does not fit them.",
        ],
        Recognition =
        [
            "Exact: A8, a number and its complement at 0x0000, and all checks of the transfer container are right.",
            "Structural: six pointers at 0x0000 with a byte a word, a start inside the ROM, and a year and a title where they say; also with the bytes of each word exchanged.",
            "Candidate: the start of a container whose checks are not right.",
        ],
        Disputes =
        [
            "The map of a ROM without a map of its own is from memory.",
            "Names of the words from $500D on, and the container's bits for writable, narrow and switched memory: from memory. The container is written without them, and without tags.",
        ],
        Sources = ["ROM header information thread (forums.atariage.com)", "Transfer protocol summary (16kram.com)", "from memory: the usual map, the names of the colors' words"],
    };
}
