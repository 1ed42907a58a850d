namespace Cartwright.Saves;

/// <summary>Bytes one after another that differ.</summary>
/// <param name="Offset">The first of them.</param>
/// <param name="Length">How many.</param>
public readonly record struct ChangedRun(int Offset, int Length);
