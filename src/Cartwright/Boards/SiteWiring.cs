using System.Collections.Immutable;
using Cartwright.Manifests;

namespace Cartwright.Boards;

/// <summary>What is unusual about how a site meets the bus, in words.</summary>
public static class SiteWiring
{
    /// <summary>A clause for each; none for a site whose lines all run straight.</summary>
    /// <param name="site">The site.</param>
    public static ImmutableArray<string> Clauses(Site site)
    {
        var clauses = ImmutableArray.CreateBuilder<string>();
        if (site.DataLinesReversed)
        {
            clauses.Add("the data lines are reversed: the chip's D0 meets the bus's highest line, and the chip file's bits are reversed to suit");
        }

        if (site.RestAt is { } at)
        {
            clauses.Add($"the rest of a ROM that is no power of two, and is longer than {ByteSize.Words(at / 2)}, lies at {ByteSize.Words(at)}");
        }

        if (site is { Blocks: { } blocks, BlockStep: { } step })
        {
            clauses.Add(FormattableString.Invariant($"{blocks} blocks lie {ByteSize.Words(step)} apart; smaller blocks are repeated inside"));
        }

        return clauses.ToImmutable();
    }
}
