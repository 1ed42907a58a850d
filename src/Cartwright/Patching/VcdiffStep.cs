namespace Cartwright.Patching;

/// <summary>Half of a row of the code table.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Size">Bytes it makes; 0 when the number follows in the instruction section.</param>
/// <param name="Mode">How a copy states its address.</param>
internal readonly record struct VcdiffStep(VcdiffKind Kind, byte Size = 0, byte Mode = 0);
