using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Inspection;

/// <summary>An image with a patch applied to it.</summary>
/// <param name="Bytes">The whole file.</param>
/// <param name="Image">The file as its platform reads it; null when that is not clear.</param>
/// <param name="Mended">What was put right after the patch, or left; empty where nothing was mended.</param>
/// <param name="Banks">The banks that are not what they were; empty where either file is of no clear platform.</param>
public sealed record PatchedImage(ReadOnlyMemory<byte> Bytes, OpenedImage? Image, ImmutableArray<HeaderChange> Mended, ImmutableArray<BankChange> Banks)
{
    /// <summary>The image as it was; null when it is of no clear platform.</summary>
    public OpenedImage? Before { get; init; }
}
