using System.Collections.Immutable;
using Cartwright.Roms;

namespace Cartwright.Images;

/// <summary>A file a build was made from.</summary>
/// <param name="File">Its name as the manifest writes it; only the last part of an absolute path.</param>
/// <param name="Format">Its format in the manifest's words; null for the manifest itself.</param>
/// <param name="Digest">What identifies it.</param>
/// <param name="Placed">Where its bytes went.</param>
public sealed record BuildInput(string File, string? Format, FileDigest Digest, ImmutableArray<PlacedSegment> Placed);
