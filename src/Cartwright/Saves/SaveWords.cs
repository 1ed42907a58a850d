namespace Cartwright.Saves;

/// <summary>How the values of the table of kinds read in print.</summary>
public static class SaveWords
{
    /// <summary>What a memory is.</summary>
    /// <param name="memory">The memory.</param>
    public static string Of(SaveMemory memory) => memory switch
    {
        SaveMemory.Ram => "RAM with battery, or FRAM",
        SaveMemory.SerialEeprom => "serial EEPROM",
        SaveMemory.Flash => "flash",
        SaveMemory.ProgramFlash => "the program's own flash",
        _ => "not in the cartridge",
    };

    /// <summary>How it meets the bus.</summary>
    /// <param name="lanes">The lanes.</param>
    public static string Of(SaveLanes lanes) => lanes switch
    {
        SaveLanes.EveryByte => "every byte",
        SaveLanes.OddBytes => "odd bytes",
        SaveLanes.EvenBytes => "even bytes",
        SaveLanes.Words => "16-bit words",
        _ => "serial",
    };
}
