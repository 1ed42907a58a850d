namespace Cartwright.Platforms.GameBoy;

/// <summary>The 48 bytes at 0x104 that the console shows and compares before it starts a cartridge (Pan Docs, The Cartridge Header).</summary>
public static class BootBitmap
{
    /// <summary>Its first byte, counted from the header's start at 0x100.</summary>
    public const int Offset = 0x04;

    /// <summary>Its length in bytes.</summary>
    public const int Length = 48;

    /// <summary>How many of its bytes the colour models and later ones compare; the earlier ones compare all.</summary>
    public const int ComparedByColor = 24;

    /// <summary>The bytes.</summary>
    public static ReadOnlySpan<byte> Bytes =>
    [
        0xCE, 0xED, 0x66, 0x66, 0xCC, 0x0D, 0x00, 0x0B, 0x03, 0x73, 0x00, 0x83, 0x00, 0x0C, 0x00, 0x0D,
        0x00, 0x08, 0x11, 0x1F, 0x88, 0x89, 0x00, 0x0E, 0xDC, 0xCC, 0x6E, 0xE6, 0xDD, 0xDD, 0xD9, 0x99,
        0xBB, 0xBB, 0x67, 0x63, 0x6E, 0x0E, 0xEC, 0xCC, 0xDD, 0xDC, 0x99, 0x9F, 0xBB, 0xB9, 0x33, 0x3E,
    ];

    /// <summary>How many of the first bytes are right.</summary>
    /// <param name="field">The 48 bytes of the cartridge.</param>
    public static int RightBytes(ReadOnlySpan<byte> field) => field.CommonPrefixLength(Bytes);

    /// <summary>Whether every model finds them right.</summary>
    /// <param name="field">The 48 bytes of the cartridge.</param>
    public static bool IsRight(ReadOnlySpan<byte> field) => field.SequenceEqual(Bytes);
}
