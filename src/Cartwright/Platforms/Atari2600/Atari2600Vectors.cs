using Cartwright.Headers;

namespace Cartwright.Platforms.Atari2600;

/// <summary>The vectors of the processor at the end of the last bank. Its NMI has no pin on this console.</summary>
internal static class Atari2600Vectors
{
    private const int Length = 4;

    public static HeaderTable Table { get; } = VectorTable.Of(Atari2600Platform.Rom, new HeaderAnchor(Length, FromEnd: true), 2, ByteOrder.LittleEndian, "2600 F8 bank switching",
        ("reset", 0, "Where the game starts."),
        ("break", 2, "Where BRK leads."));
}
