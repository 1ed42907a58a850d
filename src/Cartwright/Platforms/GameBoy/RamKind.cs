namespace Cartwright.Platforms.GameBoy;

/// <summary>Where the RAM of a cartridge type is.</summary>
public enum RamKind
{
    /// <summary>It has none.</summary>
    None,

    /// <summary>In a chip of its own, whose size the header states.</summary>
    Chip,

    /// <summary>In the controller, or an EEPROM; the header states no size.</summary>
    Inside,

    /// <summary>The sources do not say what the header states.</summary>
    Unsaid,
}
