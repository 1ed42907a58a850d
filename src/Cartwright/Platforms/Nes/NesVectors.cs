using Cartwright.Headers;

namespace Cartwright.Platforms.Nes;

/// <summary>The vectors of the processor, which end PRG on every board that shows its last bank at reset.</summary>
internal static class NesVectors
{
    private const int Length = 6;

    public static HeaderTable Table { get; } = VectorTable.Of("prg", new HeaderAnchor(Length, FromEnd: true), 2, ByteOrder.LittleEndian, "NESdev Wiki, INES",
        ("nmi", 0, "Where the interrupt of the picture's end leads."),
        ("reset", 2, "Where the game starts."),
        ("irq", 4, "Where IRQ and BRK lead."));
}
