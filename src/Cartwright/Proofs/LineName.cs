namespace Cartwright.Proofs;

/// <summary>What one line is called at its ends.</summary>
/// <param name="Chip">Its name on the chip, counted in words of the chip: <c>A12</c>, <c>D3</c>.</param>
/// <param name="Bus">Its name on the console's bus; null where no board is known, or the bus does not drive it.</param>
public readonly record struct LineName(string Chip, string? Bus);
