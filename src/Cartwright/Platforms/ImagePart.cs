namespace Cartwright.Platforms;

/// <summary>A run of an exchange file that goes into one region, or is a container's header.</summary>
/// <param name="Region">The region; null for a container's header.</param>
/// <param name="Offset">Its first byte in the region or container.</param>
/// <param name="Start">Its first byte in the file.</param>
/// <param name="Length">Bytes.</param>
public sealed record ImagePart(string? Region, int Offset, int Start, int Length)
{
    /// <summary>The file's byte after the last.</summary>
    public int End => Start + Length;
}
