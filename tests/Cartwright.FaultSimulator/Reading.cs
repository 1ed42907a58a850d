namespace Cartwright.FaultSimulator;

/// <summary>One read of the chip: which it is, and under which insertion and programming it was made.</summary>
/// <param name="Number">Counted from 0.</param>
/// <param name="Insertion">The chip was put into its socket this many times before.</param>
/// <param name="Programming">The chip was written this many times before.</param>
public sealed record Reading(int Number, int Insertion = 0, int Programming = 0);
