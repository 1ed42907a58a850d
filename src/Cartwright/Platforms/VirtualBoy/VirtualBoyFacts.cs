using Cartwright.Headers;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>What the page of the Virtual Boy says.</summary>
internal static class VirtualBoyFacts
{
    public static PlatformFacts Facts { get; } = new("vb", "Virtual Boy")
    {
        Aliases = ["virtual-boy"],
        BusWidth = 16,
        ByteOrder = ByteOrder.LittleEndian,
        // From memory.
        BusVolts = 5,
        MemoryMap =
        [
            "$00000000-$02FFFFFF picture, sound, registers (from memory)",
            "$04000000-$04FFFFFF cartridge expansion",
            "$05000000-$05FFFFFF work RAM (from memory)",
            "$06000000-$06FFFFFF cartridge RAM",
            "$07000000-$07FFFFFF ROM, repeated through 16 MiB; the upper five of 32 address bits are not seen, so $FFFFFFFF is its last byte",
            "$07FFFDE0 header, $07FFFE00 handlers, $07FFFFF0 reset: the last 544 bytes of the ROM",
        ],
        Saves = ["RAM of 8 KiB with a battery at $06000000, often on half of the bus, so that its bytes lie at every second address (from memory); ask the maker of the board"],
        Traps =
        [
            "A header at the start of the file, as on other consoles: nothing reads it, and reset fails.",
            "A size that is no power of two: the repetitions do not line up. What fills the ROM up belongs between the program and the last 544 bytes.",
            "Anything behind the last 544 bytes moves the reset code away from the end.",
            "Handlers hold 16 bytes of code each, not addresses.",
            "The jump's lower half is added with its sign: above $7FFF the upper half needs one more, or the jump misses by 64 KiB.",
            "The version byte is the n of 1.n.",
            "Even and odd chip exchanged: even bytes are on D0-D7.",
            "A0 of a 16-bit chip is A1 of the processor.",
            "There is no checksum: one wrong bit in a chip shows only when it is read back and compared.",
            "A title longer than 20 bytes runs into the zeros behind it and the publisher's letters.",
            "Loaders that start at $07000000 hide that the reset code is missing.",
            "A 3.3 V flash chip on the 5 V bus needs level translation on every line; see the data sheet.",
        ],
        Recognition =
        [
            "Structural, for a length that is a power of two from 1 KiB on: at 0xFFFFFFF0, the last 16 bytes, code that loads an address in the ROM and jumps there; or a relative jump there, and in front of the handlers a title of letters, five bytes of zero and a maker and game code of letters. Also with the bytes of each word exchanged.",
        ],
        Disputes =
        [
            "Address lines of the connector: the circulated table names A4 twice; one of them is A3. Measure a board.",
            "Lane of the save RAM: from memory only; nothing is converted here without being told.",
            "Return from interrupt: images disagree about its byte order; 00 64 is written here.",
        ],
        Sources = ["\"Sacred Tech Scroll\", Virtual Boy hardware documentation", "Virtual Boy forum: data on cartridges", "Virtual Boy forum: hardware schematics"],
    };
}
