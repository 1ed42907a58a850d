using System.Collections.Immutable;
using Cartwright.Chips;

namespace Cartwright.Plans;

/// <summary>What the user says of a chip beside the name of its part.</summary>
/// <param name="End">The end of the small sectors; null when not said.</param>
/// <param name="Map">Its sectors; empty when not said.</param>
/// <param name="Width">Data lines in use: 8 or 16; null when not said.</param>
public sealed record PlanOptions(BootEnd? End, ImmutableArray<SectorGroup> Map, int? Width)
{
    /// <summary>Nothing said.</summary>
    public static PlanOptions None { get; } = new(null, [], null);
}
