using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What the page of the Game Gear says.</summary>
internal static class GameGearFacts
{
    public static PlatformFacts Facts { get; } = new("gg", "Game Gear")
    {
        Aliases = ["game-gear"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap = SegaSources.MemoryMap,
        Saves = [.. SegaSources.Saves, "A few boards: a serial EEPROM 93C46 of 128 bytes (from memory)"],
        Traps =
        [
            .. SegaSources.Traps,
            "Boot ROMs look for TMR SEGA and do not verify the checksum.",
            "A strap of the cartridge's connector starts the console in Master System mode (from memory).",
        ],
        Disputes = [.. SegaSources.Disputes, "Region: many images have a Master System's."],
        Sources = SegaSources.Titles,
    };
}
