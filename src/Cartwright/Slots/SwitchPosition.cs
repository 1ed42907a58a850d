using System.Collections.Immutable;

namespace Cartwright.Slots;

/// <summary>One position of all switches, and what it shows.</summary>
/// <param name="IsHigh">The level of each switch's lines: high is an open switch with a pull-up.</param>
/// <param name="Title">The game that starts; null where none does.</param>
/// <param name="Shown">What is there, in words: a title, the inside of a game, or nothing.</param>
public sealed record SwitchPosition(ImmutableArray<bool> IsHigh, string? Title, string Shown);
