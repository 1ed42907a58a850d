using Cartwright.Ordering;

namespace Cartwright.Platforms;

/// <summary>What a platform says of a file it may recognise.</summary>
/// <param name="Certainty">How sure it is.</param>
/// <param name="Reason">What it saw, one clause.</param>
public sealed record RecognitionClaim(Certainty Certainty, string Reason)
{
    /// <summary>The order the image is in.</summary>
    public ImageOrder Order { get; init; } = ImageOrder.Console;

    /// <summary>Bytes in front of the image that are not part of it: a copier prefix or a container's header.</summary>
    public int PrefixLength { get; init; }

    /// <summary>The layout's variant, where the bytes show it; null where they do not.</summary>
    public string? Variant { get; init; }

    /// <summary>Id of the platform whose marks all images of this one bear as well, so that its claim on the same file says nothing more; null for none.</summary>
    public string? Includes { get; init; }

    /// <summary>Points by the platform's own measure, to rank claims of equal certainty; 0 where it has none.</summary>
    public int Score { get; init; }
}
