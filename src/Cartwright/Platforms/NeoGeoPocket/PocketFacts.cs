using Cartwright.Headers;

namespace Cartwright.Platforms.NeoGeoPocket;

/// <summary>What the page of the Neo Geo Pocket says.</summary>
internal static class PocketFacts
{
    public static PlatformFacts Facts { get; } = new("ngp", "Neo Geo Pocket / Neo Geo Pocket Color")
    {
        Aliases = ["ngpc", "neo-geo-pocket", "neo-geo-pocket-color"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 3,
        MemoryMap =
        [
            "$200000-$3FFFFF first flash chip, 2 MiB",
            "$800000-$9FFFFF second flash chip, 2 MiB",
            "$200000-$20003F header; its entry names where the program begins",
        ],
        Saves =
        [
            "blocks of the flash chip itself, written by the boot ROM: 64 KiB each, and in the last 64 KiB 32, 8, 8 and 16 KiB",
            "512 KiB chip: 70000, 78000, 7A000, 7C000 begin the small blocks; 1 MiB: F0000, F8000, FA000, FC000; 2 MiB: 1F0000, 1F8000, 1FA000, 1FC000",
        ],
        Traps =
        [
            "Fill with 0xFF, never 0x00: the boot ROM writes saves into blank blocks of the same chip.",
            "The entry is an address from $200000 on, not an offset into the file.",
            "A read-back of a cartridge that was played holds saves, and is no master.",
            "The boot ROM knows few flash chips by their codes (maker 98, EC or B0; device AB, 2C or 2F); others can hold the game, but take no saves.",
        ],
        Recognition = ["The licence text at 0x000000: certain."],
        Disputes = ["The byte that marks the Color model: one document has it at 0x22; parsers that run the library use 0x23, as here."],
        Sources = ["NGPC specification text (devrs.com)", "flash block table, public driver source (address not kept)"],
    };
}
