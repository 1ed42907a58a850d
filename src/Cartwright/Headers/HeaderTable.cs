using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>The fields and checksums of one header.</summary>
/// <param name="Title">What the header is called in documents.</param>
/// <param name="Region">The region it lies in; null for a container, which stands before the ROM in the exchange file.</param>
/// <param name="Anchor">Where it begins in the region.</param>
/// <param name="Length">Bytes from the first to the last field.</param>
/// <param name="Fields">The fields, each after those its value depends on.</param>
public sealed record HeaderTable(string Title, string? Region, HeaderAnchor Anchor, int Length, ImmutableArray<HeaderField> Fields)
{
    /// <summary>The checksums, each after those it covers.</summary>
    public ImmutableArray<ChecksumRow> Checksums { get; init; } = [];

    /// <summary>Whether something else stands where the header belongs, so that an existing image must not be mended there; null where that never shows.</summary>
    public HeaderTest? IsOther { get; init; }
}
