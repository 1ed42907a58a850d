using System.Collections.Immutable;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What the pages of Master System and Game Gear say alike.</summary>
internal static class SegaSources
{
    public static ImmutableArray<string> MemoryMap { get; } =
    [
        "$0000-$3FFF slot 0; with the Sega mapper $0000-$03FF always shows bank 0",
        "$4000-$7FFF slot 1",
        "$8000-$BFFF slot 2, or save RAM",
        "$C000-$DFFF work RAM, 8 KiB",
        "$E000-$FFFF repeat of work RAM",
        "$FFFC-$FFFF registers of the Sega mapper: control, banks of slots 0, 1 and 2",
        "$0000 start; $0038 interrupt in mode 1; $0066 non-maskable interrupt",
        "0x7FF0-0x7FFF header (0x3FF0 in a ROM of 16 KiB, 0x1FF0 in one of 8 KiB); 0x7FE0-0x7FEF author's tag",
    ];

    public static ImmutableArray<string> Saves { get; } =
    [
        "SRAM of 8 KiB, sometimes 16 or 32, in slot 2 through bit 3 of $FFFC, its second 16 KiB by bit 2: plain bytes in order; files are often filled up to 32 KiB",
    ];

    public static ImmutableArray<string> Traps { get; } =
    [
        "The checksum is stored low byte first.",
        "A size code of 0 means 256 KiB, not nothing: on a smaller ROM the console sums open bus. 32KiB is right for every ROM of that size or more.",
        "A size code smaller than the ROM is legal, and the console starts sooner.",
        "The linker must leave 0x7FF0-0x7FFF free.",
        "The product code's last two digits come first.",
        "Some consoles do not set the slots' registers: a program must do it before it leaves the first 1 KiB.",
        "The first 1 KiB stays with the Sega mapper and is switched with the three-register one.",
        "A ROM of 48 KiB takes the size code 32KiB: the one for 48 KiB is faulty.",
        "Some mapper chips have slot 2 only, or reach 128 KiB only.",
        "Repeating the ROM in a larger chip does not change the checksum, but the ROM must be as long as its size code says.",
    ];

    public static ImmutableArray<string> Disputes { get; } =
    [
        "Byte order of the checksum: an old tag specification says high byte first; the header's description, decoders and working images have the low byte first.",
        "Size code D (48 KiB): by one decoder the header is summed with the rest and the last 16 KiB twice; not written here.",
        "Size code 2 (1 MiB): reported to be summed wrongly; not written here.",
        "Ranges of the codes E, F, 0 and 1: from one decoder and from memory.",
        "Banks shown at the start (0, 1, 2): from memory.",
        "Some ROMs have a header of bank sums at 0x7FE0; its algorithm is not sure (from memory), so it is left as it is.",
    ];

    public static ImmutableArray<string> Titles { get; } =
    [
        "ROM Header, smspower.org",
        "Mappers, smspower.org",
        "Memory Map, smspower.org",
        "Codemasters Header, smspower.org",
        "SDSC ROM Tag Specification and SDSC Header, smspower.org",
        "Slot 2 mapping, smspower.org",
        "Sega ROM signatures note, incoherency.co.uk",
        "file/libmagic 5.44, magic/Magdir/console",
    ];
}
