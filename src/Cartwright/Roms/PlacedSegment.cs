using Cartwright.Findings;

namespace Cartwright.Roms;

/// <summary>A run of a program's bytes at its place in the ROM.</summary>
/// <param name="Region">The region.</param>
/// <param name="Offset">First byte in the region; below zero it counts back from the region's end, until the region is built.</param>
/// <param name="Bytes">The bytes.</param>
/// <param name="Program">The program file it came from.</param>
/// <param name="Place">Where in that file it begins.</param>
public sealed record PlacedSegment(string Region, long Offset, ReadOnlyMemory<byte> Bytes, string Program, SourcePlace Place)
{
    /// <summary>Length in bytes.</summary>
    public int Length => Bytes.Length;

    /// <summary>Offset of the byte after the last one.</summary>
    public long End => Offset + Bytes.Length;
}
