namespace Cartwright.Platforms.Nes;

/// <summary>Whether the ROM answers while the CPU writes to the mapper, so that the mapper sees the written value AND the ROM's byte.</summary>
public enum BusConflicts
{
    /// <summary>It does not.</summary>
    None,

    /// <summary>It does.</summary>
    Always,

    /// <summary>It does on some boards.</summary>
    SomeBoards,

    /// <summary>It does where the program chip is not wired to be rewritten by the console.</summary>
    UnlessSelfFlash,
}
