using System.Collections.Immutable;
using Cartwright.Roms;

namespace Cartwright.Images;

/// <summary>A file a build was made from.</summary>
/// <param name="file">Its name as the manifest writes it; only the last part of an absolute path.</param>
/// <param name="format">Its format in the manifest's words; null for the manifest itself.</param>
/// <param name="bytes">The whole file.</param>
/// <param name="placed">Where its bytes went.</param>
public sealed class BuildInput(string file, string? format, ReadOnlyMemory<byte> bytes, ImmutableArray<PlacedSegment> placed)
{
    private FileDigest? _digest;

    /// <summary>Its name as the manifest writes it; only the last part of an absolute path.</summary>
    public string File => file;

    /// <summary>Its format in the manifest's words; null for the manifest itself.</summary>
    public string? Format => format;

    /// <summary>What identifies it. Computed when first asked for: only the record wants it, and a crypto library may still be loading.</summary>
    public FileDigest Digest => _digest ??= FileDigest.Of(bytes.Span);

    /// <summary>Where its bytes went.</summary>
    public ImmutableArray<PlacedSegment> Placed => placed;
}
