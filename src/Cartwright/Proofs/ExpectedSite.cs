using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.ReadBacks;

namespace Cartwright.Proofs;

/// <summary>What a build has for one chip.</summary>
/// <param name="Site">The site.</param>
/// <param name="Bytes">The bytes of the chip file.</param>
/// <param name="Shape">Width of the chip and order of the bytes of a word in the file.</param>
public sealed record ExpectedSite(Site Site, byte[] Bytes, WordShape Shape)
{
    /// <summary>The part; null when it is not known.</summary>
    public Part? Part { get; init; }

    /// <summary>The part's name as it was written, which may say the end its boot sectors are at; null when none was.</summary>
    public string? PartName { get; init; }

    /// <summary>The chip file; null where the image was made in memory.</summary>
    public string? File { get; init; }

    /// <summary>Bytes that differ from unit to unit.</summary>
    public ImmutableArray<ByteRange> MayDiffer { get; init; } = [];
}
