using System.Collections.Immutable;

namespace Cartwright.Saves;

/// <summary>One state of one unit's save, as it was kept.</summary>
/// <param name="Unit">The unit: its serial number, or any name its owner knows it by.</param>
/// <param name="Number">Which of the unit's generations, from 1.</param>
/// <param name="Date">The day it was read.</param>
/// <param name="IsDateGiven">True when the day was stated; false when it is that of the file.</param>
/// <param name="Reads">Whether two reads agreed.</param>
/// <param name="Files">The file; both reads where they differ.</param>
public sealed record SaveGeneration(string Unit, int Number, DateOnly Date, bool IsDateGiven, ReadAgreement Reads, ImmutableArray<KeptFile> Files);
