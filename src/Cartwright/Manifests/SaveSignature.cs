using System.Collections.Immutable;

namespace Cartwright.Manifests;

/// <summary>Bytes by which a game knows its save.</summary>
/// <param name="Offset">The first of them, from the start of the save or of its slot.</param>
/// <param name="Bytes">The bytes.</param>
public sealed record SaveSignature(long Offset, ImmutableArray<byte> Bytes);
