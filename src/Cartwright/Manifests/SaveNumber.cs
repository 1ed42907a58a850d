namespace Cartwright.Manifests;

/// <summary>A number that a game writes into its save.</summary>
/// <param name="Offset">Its first byte, from the start of the save or of its slot.</param>
/// <param name="Width">Its bytes: 1, 2 or 4.</param>
/// <param name="LowByteFirst">True when its low byte comes first.</param>
public sealed record SaveNumber(long Offset, int Width, bool LowByteFirst);
