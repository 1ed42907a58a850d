namespace Cartwright.Platforms.Nes;

/// <summary>How much of a container header can be trusted.</summary>
public enum NesGeneration
{
    /// <summary>NES 2.0: all of it.</summary>
    Nes2,

    /// <summary>iNES: all of it, though bytes 8 to 11 are rarely used.</summary>
    INes,

    /// <summary>Marked as older than iNES: only bytes 4 to 6.</summary>
    Archaic,

    /// <summary>Text or other matter in the last bytes: only bytes 4 to 6.</summary>
    Damaged,
}
