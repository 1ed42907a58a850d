namespace Cartwright.Proofs;

/// <summary>Neighbouring bytes of an image.</summary>
/// <param name="Offset">The first byte.</param>
/// <param name="Length">How many.</param>
public readonly record struct ByteRange(int Offset, int Length);
