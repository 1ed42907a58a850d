namespace Cartwright.Saves;

/// <summary>A block in which bytes differ.</summary>
/// <param name="Number">Which block, from 0.</param>
/// <param name="ChangedBytes">How many of its bytes differ.</param>
public readonly record struct ChangedBlock(int Number, int ChangedBytes);
