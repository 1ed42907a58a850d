using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>A table the programs hold for a board whose ROM answers while the console writes to it: each byte is the value that is written over it.</summary>
/// <param name="At">Where it begins, as a program would be placed.</param>
/// <param name="Values">The values, in the order of the table.</param>
public sealed record ConflictTable(ProgramEntry At, ImmutableArray<byte> Values);
