namespace Cartwright.Headers;

/// <summary>Where a header table begins in its region.</summary>
/// <param name="Offset">Bytes from the region's start, or back from its end.</param>
/// <param name="FromEnd">True to count back from the end.</param>
public readonly record struct HeaderAnchor(int Offset, bool FromEnd = false)
{
    /// <summary>Bytes back from the end of a region too short for <see cref="Offset"/>; 0 where the place does not move.</summary>
    public int Tail { get; init; }

    /// <summary>The table's first byte in a region.</summary>
    /// <param name="regionLength">Length of the region in bytes.</param>
    public int In(int regionLength) => FromEnd ? regionLength - Offset : Tail > 0 ? Math.Min(Offset, regionLength - Tail) : Offset;

    /// <summary>The smallest region, in bytes, that has room for a table of a length.</summary>
    /// <param name="length">The table's length in bytes.</param>
    public int Needs(int length) => FromEnd ? Math.Max(Offset, length) : Tail > 0 ? Math.Max(Tail, length) : Offset + length;
}
