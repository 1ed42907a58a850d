namespace Cartwright.Platforms.MegaDrive;

/// <summary>What keeps the player's progress.</summary>
internal enum SaveKind
{
    /// <summary>RAM that loses its contents with the power.</summary>
    Volatile,

    /// <summary>RAM behind a battery.</summary>
    Battery,

    /// <summary>A serial EEPROM.</summary>
    Eeprom,

    /// <summary>Sectors of the flash chip that also holds the program.</summary>
    Flash,
}
