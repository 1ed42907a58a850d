using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Inspection;

/// <summary>An image as mending leaves it.</summary>
/// <param name="Bytes">The whole file: as long, and in the same order, as it was.</param>
/// <param name="Changes">What was not right, in the order of the headers; those that were left say why.</param>
public sealed record MendedImage(ReadOnlyMemory<byte> Bytes, ImmutableArray<HeaderChange> Changes)
{
    /// <summary>True when any byte is another than before.</summary>
    public bool IsChanged => Changes.Any(static change => change.Left is null);
}
