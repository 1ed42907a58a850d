namespace Cartwright.Saves;

/// <summary>What keeps the player's progress.</summary>
public enum SaveMemory
{
    /// <summary>RAM behind a battery, or FRAM in its place.</summary>
    Ram,

    /// <summary>A serial EEPROM.</summary>
    SerialEeprom,

    /// <summary>A flash chip of its own.</summary>
    Flash,

    /// <summary>Sectors of the flash chip that holds the program.</summary>
    ProgramFlash,

    /// <summary>RAM in a controller or another device that is no part of the cartridge.</summary>
    Accessory,
}
