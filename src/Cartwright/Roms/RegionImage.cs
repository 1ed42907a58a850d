using System.Collections.Immutable;

namespace Cartwright.Roms;

/// <summary>A region with its bytes placed and its gaps filled. The header is written into it last; after that it does not change.</summary>
/// <param name="name">The region.</param>
/// <param name="bytes">All its bytes; the array is owned by this region.</param>
/// <param name="fill">Value of bytes no program covers.</param>
/// <param name="coverage">What the programs cover, ascending, without overlaps.</param>
public sealed class RegionImage(string name, byte[] bytes, byte fill, ImmutableArray<PlacedSegment> coverage)
{
    /// <summary>The region's name.</summary>
    public string Name => name;

    /// <summary>The bytes as the console sees them.</summary>
    public ReadOnlyMemory<byte> Bytes => bytes;

    /// <summary>Length in bytes.</summary>
    public int Length => bytes.Length;

    /// <summary>Value of bytes no program covers.</summary>
    public byte Fill => fill;

    /// <summary>What the programs cover, ascending, without overlaps.</summary>
    public ImmutableArray<PlacedSegment> Coverage => coverage;

    internal Span<byte> Writable => bytes;

    /// <summary>The segment that covers any byte of a range; null when no program does.</summary>
    /// <param name="offset">First byte of the range.</param>
    /// <param name="length">Its length in bytes.</param>
    public PlacedSegment? CoveringSegment(long offset, long length)
    {
        foreach (var segment in coverage)
        {
            if (segment.Offset < offset + length && offset < segment.End)
            {
                return segment;
            }
        }

        return null;
    }
}
