using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What the pages of the Master System, the Game Gear and the SG-1000 say.</summary>
internal static class SegaFacts
{
    private static readonly ImmutableArray<string> Map =
    [
        "$0000-$3FFF ROM, slot 0; with the usual mapper the first 1 KiB always shows bank 0",
        "$4000-$7FFF ROM, slot 1",
        "$8000-$BFFF ROM, slot 2, or cartridge RAM",
        "$C000-$DFFF work RAM, repeated at $E000",
        "$FFFC-$FFFF mapper: RAM control, banks of slots 0, 1, 2",
        "$0000 reset; $0038 interrupt; $0066 pause key",
    ];

    private static readonly ImmutableArray<string> Traps =
    [
        "The checksum is little-endian; the product code's low digits come first.",
        "Size nibble 0 means 256 KiB: left at 0 on a smaller ROM, the boot ROM sums what is not there.",
        "Size nibbles D and 2 are faulty in boot ROMs: never use them.",
        "A size nibble smaller than the ROM is legal, and the console starts sooner; a ROM of 48 KiB takes C too.",
        "Repeating the ROM in a larger chip does not change the checksum, but the ROM must be as long as its size nibble says.",
        "The linker must keep the header's place free: code there is overwritten, or breaks the mark.",
        "Only consoles with a boot ROM set the mapper; a game must set the slots itself.",
        "The first 1 KiB is never switched by the usual mapper, but it is by the one with registers at $0000, $4000 and $8000.",
        "Some mapper chips have slot 2 only, or reach 128 KiB only.",
    ];

    private static readonly ImmutableArray<string> Recognition =
    [
        "Exact: the mark TMR SEGA at 0x7FF0, 0x3FF0 or 0x1FF0, also behind a prefix of 512 bytes, and a region nibble of this console.",
        "Candidate: the mark, and a nibble of the other console: many images carry the wrong one.",
    ];

    private static readonly ImmutableArray<string> Disputes =
    [
        "Byte order of the checksum: an old tag specification says big-endian; the main page, decoders and working images are little-endian, which is written here.",
        "Size nibbles D and 2: their faults are known second-hand only; they are not written here.",
        "Some ROMs hold a header of bank sums at 0x7FE0; its algorithm is not sure (from memory), so it is left as it is.",
        "Banks shown at power-on (0, 1, 2), and the mappers with one and with four registers: from memory.",
        "Size nibbles E, F, 0 and 1 rest on decoders and memory; no released game uses them. C is right for any ROM of 32 KiB and more.",
    ];

    private static readonly ImmutableArray<string> Sources =
        ["ROM Header (smspower.org)", "Mappers (smspower.org)", "Memory Map (smspower.org)", "Codemasters Header (smspower.org)", "SG-1000/SC-3000 expanded RAM (smspower.org)", "SDSC ROM Tag Specification (smspower.org)", "SDSC Header (smspower.org)", "Sega ROM signatures note"];

    public static PlatformFacts MasterSystem { get; } = Make("sms", "Master System") with
    {
        Aliases = ["master-system", "mark-iii"],
        Saves = ["battery RAM, 8 KiB, rarely 16 or 32: plain bytes in order, in slot 2; files are often padded to 32 KiB"],
        Traps = [.. Traps, "The pause key interrupts the program at $0066, whatever it does.", "Export models refuse a wrong checksum or a missing mark; Japanese ones start the ROM all the same."],
    };

    public static PlatformFacts GameGear { get; } = Make("gg", "Game Gear") with
    {
        Aliases = ["game-gear"],
        Traps = [.. Traps, "Boot ROMs look for the mark and do not verify the checksum."],
        Saves = ["battery RAM, 8 KiB: plain bytes in order", "serial EEPROM of 128 bytes on a few boards (from memory)"],
    };

    public static PlatformFacts Sg1000 { get; } = Make("sg1000", "SG-1000 / SC-3000") with
    {
        Aliases = ["sg-1000", "sc-3000"],
        Recognition = ["Candidate: no mark, and a start as Z80 programs commonly have it: interrupts off, then mode 1, the stack or a jump. The handlers at $0038 and $0066 and the console's name near the start are further signs. Nothing tells such an image from a Master System's."],
        MemoryMap = ["$0000-$BFFF ROM", "$C000-$C3FF work RAM, repeated up to $FFFF", "$0000 reset; $0038 interrupt; $0066 key"],
        Traps = ["There is no header and no checksum.", "Some cartridges have RAM at $2000-$3FFF or $8000: the ROM under it is not seen.", "The pause key interrupts the program at $0066, whatever it does."],
        Disputes = [],
    };

    private static PlatformFacts Make(string id, string name) => new(id, name)
    {
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap = Map,
        Traps = Traps,
        Recognition = Recognition,
        Disputes = Disputes,
        Sources = Sources,
    };
}
