namespace Cartwright.Proofs;

/// <summary>How many words of a part of a chip read wrong.</summary>
/// <param name="Number">The part's number, from 0.</param>
/// <param name="Offset">Its first byte.</param>
/// <param name="Length">Its bytes.</param>
/// <param name="WrongWords">Words of it that are wrong in at least one read.</param>
public readonly record struct DifferenceRow(int Number, int Offset, int Length, int WrongWords);
