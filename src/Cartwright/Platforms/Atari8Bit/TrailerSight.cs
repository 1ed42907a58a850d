using System.Buffers.Binary;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>Whether six bytes look like the trailer of a computer's cartridge.</summary>
internal static class TrailerSight
{
    private const int Left = 0xC000;
    private const int Right = 0xA000;
    private const int Slots = 0x4000;
    private const int Slot = 0x2000;

    /// <summary>Whether the last bytes of an image say that a cartridge is there, and start inside it.</summary>
    /// <param name="image">The image.</param>
    public static bool Agrees(ReadOnlySpan<byte> image) =>
        image.Length >= ComputerTrailer.Length
        && (Agrees(image, Left, Math.Min(image.Length, Slots)) || (image.Length == Slot && Agrees(image, Right, Slot)));

    private static bool Agrees(ReadOnlySpan<byte> image, int end, int length)
    {
        var trailer = image[^ComputerTrailer.Length..];
        return trailer[2] == 0 && IsInside(trailer, end, length) && IsInside(trailer[4..], end, length);
    }

    private static bool IsInside(ReadOnlySpan<byte> word, int end, int length) =>
        BinaryPrimitives.ReadUInt16LittleEndian(word) is var at && at >= end - length && at < end;
}
