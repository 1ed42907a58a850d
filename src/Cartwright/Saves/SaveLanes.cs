namespace Cartwright.Saves;

/// <summary>How the bytes of a save memory meet the console's bus.</summary>
public enum SaveLanes
{
    /// <summary>One byte after the other.</summary>
    EveryByte,

    /// <summary>An 8-bit memory on the odd bytes of a 16-bit bus.</summary>
    OddBytes,

    /// <summary>An 8-bit memory on the even bytes of a 16-bit bus.</summary>
    EvenBytes,

    /// <summary>Words of 16 bits.</summary>
    Words,

    /// <summary>A serial line, no addresses on the bus.</summary>
    Serial,
}
