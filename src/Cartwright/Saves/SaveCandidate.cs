using System.Collections.Immutable;

namespace Cartwright.Saves;

/// <summary>Something a file can be.</summary>
/// <param name="Platform">The platform's id.</param>
/// <param name="Kind">The kind of save memory.</param>
/// <param name="Form">How the file is written.</param>
/// <param name="Size">Bytes of the memory.</param>
/// <param name="Strength">How much of the file speaks for it: 0 where only a smaller memory with filler behind it does, one more for the exact size, and one more each for a lane of filler and for a clock.</param>
/// <param name="Reasons">What speaks for it, a phrase each.</param>
public sealed record SaveCandidate(string Platform, SaveKind Kind, SaveForm Form, int Size, int Strength, ImmutableArray<string> Reasons);
