namespace Cartwright.Roms;

/// <summary>Where an address of the console lies in the ROM.</summary>
/// <param name="Region">The region; null when the address is not in the ROM.</param>
/// <param name="Offset">Byte offset in the region; below zero it counts back from the region's end.</param>
/// <param name="Run">How many bytes from here on have ascending addresses and ascending offsets together.</param>
/// <param name="Problem">Why the address is not in the ROM, one clause; null when it is.</param>
public readonly record struct AddressPlace(string? Region, long Offset, long Run, string? Problem)
{
    /// <summary>An address that lies in the ROM.</summary>
    /// <param name="region">The region.</param>
    /// <param name="offset">Byte offset in the region; below zero it counts back from the region's end.</param>
    /// <param name="run">Bytes up to the end of the window or bank.</param>
    public static AddressPlace In(string region, long offset, long run) => new(region, offset, run, null);

    /// <summary>An address that does not.</summary>
    /// <param name="problem">Why, one clause: "$7E0000 is work RAM".</param>
    public static AddressPlace Nowhere(string problem) => new(null, 0, 0, problem);
}
