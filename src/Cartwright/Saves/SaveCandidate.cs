using System.Collections.Immutable;

namespace Cartwright.Saves;

/// <summary>Something a file can be.</summary>
/// <param name="Platform">The platform's id.</param>
/// <param name="Kind">The kind of save memory.</param>
/// <param name="Form">How the file is written.</param>
/// <param name="Size">Bytes of the memory.</param>
/// <param name="Strength">How much of the file speaks for it: 0 where only a size with filler behind it does, 1 the exact size, 2 bytes that only this has.</param>
/// <param name="Reasons">What speaks for it, a phrase each.</param>
public sealed record SaveCandidate(string Platform, SaveKind Kind, SaveForm Form, int Size, int Strength, ImmutableArray<string> Reasons);
