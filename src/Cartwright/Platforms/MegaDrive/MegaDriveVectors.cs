using Cartwright.Headers;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The vectors of the processor at the ROM's start.</summary>
internal static class MegaDriveVectors
{
    public static HeaderTable Table { get; } = VectorTable.Of(MegaDriveHeader.Region, new HeaderAnchor(0), 4, ByteOrder.BigEndian, "Genesis vector and header table",
        ("stack", 0x00, "Where the stack begins."),
        ("reset", 0x04, "Where the game starts."),
        ("busError", 0x08, "Where an access that nothing answers leads."),
        ("addressError", 0x0C, "Where a word access at an odd address leads."),
        ("external", 0x68, "Where the interrupt of the pads leads."),
        ("horizontal", 0x70, "Where the interrupt of the picture's line leads."),
        ("vertical", 0x78, "Where the interrupt of the picture's end leads."));
}
