namespace Cartwright.Chips;

/// <summary>A time a chip states of itself; the unit is that of the property.</summary>
/// <param name="Typical">The typical time.</param>
/// <param name="Longest">The longest time; null when not said.</param>
public readonly record struct CfiTime(long Typical, long? Longest);
