namespace Cartwright.Proofs;

/// <summary>How often a data line reads wrong.</summary>
/// <param name="Line">The line.</param>
/// <param name="ReadHigh">Words in which it reads high and should be low, in any read.</param>
/// <param name="ReadLow">Words in which it reads low and should be high, in any read.</param>
public readonly record struct LineDifference(int Line, int ReadHigh, int ReadLow);
