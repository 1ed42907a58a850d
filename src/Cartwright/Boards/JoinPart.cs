namespace Cartwright.Boards;

/// <summary>A stretch of a region inside a join.</summary>
/// <param name="Region">The region.</param>
/// <param name="Start">First byte of the stretch in the region.</param>
/// <param name="Length">Most bytes it can have; null for all that follow.</param>
/// <param name="At">Where in the join it lies.</param>
public sealed record JoinPart(string Region, long Start, long? Length, long At)
{
    /// <summary>Offset of the byte after the stretch's last in its region, were the region endless.</summary>
    public long End => Length is { } length ? Start + length : long.MaxValue;
}
