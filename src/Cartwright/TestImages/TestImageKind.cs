namespace Cartwright.TestImages;

/// <summary>One row of the table of test images. A kind is made either for each chip or for each region.</summary>
/// <param name="Name">Its name on the command line.</param>
/// <param name="Holds">What the image holds.</param>
/// <param name="Tells">What one read of it tells.</param>
/// <param name="CannotTell">What one read of it cannot tell.</param>
public sealed record TestImageKind(string Name, string Holds, string Tells, string CannotTell)
{
    /// <summary>Makes the image of one chip; null for a kind that is made for a region.</summary>
    public Func<ChipTarget, byte[]>? OfChip { get; init; }

    /// <summary>Makes the image of one region; null for a kind that is made for a chip.</summary>
    public Func<RegionTarget, byte[]>? OfRegion { get; init; }

    /// <summary>True when the image of a chip depends on its seed.</summary>
    public bool HasSeed { get; init; }

    /// <summary>True when the image depends on the size of a bank.</summary>
    public bool HasBanks { get; init; }
}
