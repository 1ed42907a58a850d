using System.Collections.Immutable;

namespace Cartwright.Proofs;

/// <summary>A line that is named in several units, or at several chips of one.</summary>
/// <param name="Line">The line: of the bus where several chips share it, else of the chip.</param>
/// <param name="Site">The chip; null where several chips share the line.</param>
/// <param name="Where">The units, or the chips, in order.</param>
/// <param name="OutOf">Units with a named line, or chips read.</param>
/// <param name="Chance">How likely as many would name some line together if each had one at random.</param>
public sealed record SharedLine(string Line, string? Site, ImmutableArray<string> Where, int OutOf, double Chance)
{
    /// <summary>True where chance is a poor explanation, so that the board itself, or what several chips share, is a good one.</summary>
    public bool PointsAtTheBoard => Site is null || Chance < 0.05;
}
