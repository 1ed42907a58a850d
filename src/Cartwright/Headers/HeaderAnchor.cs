namespace Cartwright.Headers;

/// <summary>Where a header table begins in its region.</summary>
/// <param name="Offset">Bytes from the region's start, or back from its end.</param>
/// <param name="FromEnd">True to count back from the end.</param>
public readonly record struct HeaderAnchor(int Offset, bool FromEnd = false)
{
    /// <summary>The table's first byte in a region.</summary>
    /// <param name="regionLength">Length of the region in bytes.</param>
    public int In(int regionLength) => FromEnd ? regionLength - Offset : Offset;

    /// <summary>The smallest region, in bytes, that has room for a table of a length.</summary>
    /// <param name="length">The table's length in bytes.</param>
    public int Needs(int length) => FromEnd ? Math.Max(Offset, length) : Offset + length;
}
