namespace Cartwright.Platforms.Lynx;

/// <summary>
/// What can be seen of the encrypted boot header without decrypting it: it consists of frames, each a count byte and as many
/// blocks of 51 bytes; nothing marks the last frame (Cartridge headers, The Atari Lynx Book).
/// </summary>
public static class LynxBoot
{
    /// <summary>The smallest first byte: eight blocks.</summary>
    public const byte SmallestCount = 0xF8;

    private const int BlockLength = 51;
    private const byte ThreeBlocks = 0xFD;
    private const byte FiveBlocks = 0xFB;

    /// <summary>Bytes of a frame with its count byte, which holds 0x100 less the number of blocks.</summary>
    /// <param name="count">The count byte.</param>
    public static int FrameLength(byte count) => 1 + ((0x100 - count) * BlockLength);

    /// <summary>Where the directory begins, behind the two frames that published cartridges begin with; null for any other loader, whose directory may lie anywhere.</summary>
    /// <param name="rom">The ROM.</param>
    public static int? Directory(ReadOnlySpan<byte> rom)
    {
        if (rom.IsEmpty || rom[0] is not (ThreeBlocks or FiveBlocks))
        {
            return null;
        }

        var first = FrameLength(rom[0]);
        return rom.Length > first && rom[first] == FiveBlocks ? first + FrameLength(FiveBlocks) : null;
    }
}
