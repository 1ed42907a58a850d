namespace Cartwright.Patching;

/// <summary>What a patch itself let us check.</summary>
[Flags]
public enum PatchChecks
{
    /// <summary>Nothing: compare size and CRC-32 of base and result with what the patch's author states.</summary>
    None = 0,

    /// <summary>The patch is as its author made it.</summary>
    Patch = 1,

    /// <summary>The base is the one the patch was made for.</summary>
    Base = 2,

    /// <summary>The result is the one its author had.</summary>
    Result = 4,
}
