using Cartwright.Headers;

namespace Cartwright.Platforms.Snes;

/// <summary>The vectors of the processor behind the header: those of its native mode, then those of the mode it starts in.</summary>
internal static class SnesVectors
{
    public static HeaderTable For(SnesMapping mapping) => VectorTable.Of("rom", new HeaderAnchor(mapping.Header), 2, ByteOrder.LittleEndian, "fullsnes, cartridge chapters",
        ("nativeCop", 0x34, "Where COP leads in native mode."),
        ("nativeBrk", 0x36, "Where BRK leads in native mode."),
        ("nativeNmi", 0x3A, "Where the interrupt of the picture's end leads in native mode."),
        ("nativeIrq", 0x3E, "Where IRQ leads in native mode."),
        ("cop", 0x44, "Where COP leads in emulation mode."),
        ("nmi", 0x4A, "Where the interrupt of the picture's end leads in emulation mode."),
        ("reset", 0x4C, "Where the game starts, in emulation mode."),
        ("irq", 0x4E, "Where IRQ and BRK lead in emulation mode."));
}
