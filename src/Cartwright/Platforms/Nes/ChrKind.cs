namespace Cartwright.Platforms.Nes;

/// <summary>What a board has for CHR.</summary>
public enum ChrKind
{
    /// <summary>A ROM chip.</summary>
    Rom,

    /// <summary>RAM, and no chip to write.</summary>
    Ram,

    /// <summary>ROM on some boards, RAM on others.</summary>
    RomOrRam,

    /// <summary>ROM and RAM side by side.</summary>
    RomAndRam,

    /// <summary>Nothing: the console's own video memory serves.</summary>
    None,
}
