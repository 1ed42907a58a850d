namespace Cartwright.Chips;

/// <summary>The technology of a part.</summary>
public enum PartKind
{
    /// <summary>Flash: written in the circuit or a programmer, erased by sector, page or chip.</summary>
    NorFlash,

    /// <summary>EPROM with a window, erased as a whole with ultraviolet light.</summary>
    UvEprom,

    /// <summary>EPROM without a window: written once.</summary>
    Otp,

    /// <summary>Electrically erasable ROM, parallel or serial.</summary>
    Eeprom,

    /// <summary>Static RAM: loses its contents without power.</summary>
    Sram,

    /// <summary>Ferroelectric RAM: keeps its contents without power.</summary>
    Fram,
}
