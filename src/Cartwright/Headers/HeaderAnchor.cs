using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>Where a header table begins in its region.</summary>
/// <param name="Offset">Bytes from the region's start, or back from its end.</param>
/// <param name="FromEnd">True to count back from the end.</param>
public readonly record struct HeaderAnchor(int Offset, bool FromEnd = false)
{
    private readonly ImmutableArray<(int Length, int Offset)> _shorter;

    /// <summary>Other offsets for small regions: in a region of less than so many bytes, the table begins at that offset. The smallest length comes last.</summary>
    public ImmutableArray<(int Length, int Offset)> Shorter
    {
        get => _shorter.IsDefault ? [] : _shorter;
        init => _shorter = value;
    }

    /// <summary>The table's first byte in a region.</summary>
    /// <param name="regionLength">Length of the region in bytes.</param>
    public int In(int regionLength)
    {
        var offset = Offset;
        foreach (var (length, other) in Shorter)
        {
            offset = regionLength < length ? other : offset;
        }

        return FromEnd ? regionLength - offset : offset;
    }

    /// <summary>The smallest region, in bytes, that has room for a table of a length.</summary>
    /// <param name="length">The table's length in bytes.</param>
    public int Needs(int length)
    {
        var offset = Shorter.IsEmpty ? Offset : Shorter[^1].Offset;
        return FromEnd ? Math.Max(offset, length) : offset + length;
    }
}
