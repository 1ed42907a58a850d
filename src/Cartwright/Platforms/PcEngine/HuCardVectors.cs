using Cartwright.Headers;

namespace Cartwright.Platforms.PcEngine;

/// <summary>The vectors of the processor at the end of bank 0. All but that of reset are from memory.</summary>
internal static class HuCardVectors
{
    public static HeaderTable Table { get; } = VectorTable.Of(HuCard.Region, new HeaderAnchor(HuCard.Reset - 8), 2, ByteOrder.LittleEndian, "from memory",
        ("irq2", 0, "Where IRQ2 and BRK lead."),
        ("irq1", 2, "Where the interrupt of the picture leads."),
        ("timer", 4, "Where the interrupt of the timer leads."),
        ("nmi", 6, "Where NMI leads, which nothing raises."),
        ("reset", 8, "Where the game starts."));
}
