using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What the page of the Master System says.</summary>
internal static class MasterSystemFacts
{
    public static PlatformFacts Facts { get; } = new("sms", "Master System / Mark III")
    {
        Aliases = ["master-system", "mark-iii"],
        BusWidth = 8,
        ByteOrder = ByteOrder.LittleEndian,
        BusVolts = 5,
        MemoryMap = SegaSources.MemoryMap,
        Saves = SegaSources.Saves,
        Traps =
        [
            .. SegaSources.Traps,
            "A wrong checksum or a missing mark: export models refuse the cartridge, Japanese ones start it.",
            "The pause button interrupts the program at $0066, whatever it does.",
        ],
        Disputes = [.. SegaSources.Disputes, "Region: export models are said to want 4 (not verified); many images have another console's."],
        Sources = SegaSources.Titles,
    };
}
