using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>A field or checksum of an existing image that was put right, or was left although it is not right.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Offset">Its first byte in the region.</param>
/// <param name="Before">Its bytes as they were.</param>
/// <param name="After">Its bytes as they are, or would be.</param>
/// <param name="Was">What it said, in words.</param>
/// <param name="Is">What it says, or would say.</param>
public sealed record HeaderChange(string Name, int Offset, ImmutableArray<byte> Before, ImmutableArray<byte> After, string Was, string Is)
{
    /// <summary>Why it was left: the value may be meant; null when it was put right.</summary>
    public string? Left { get; init; }
}
