using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Ordering;

namespace Cartwright.Boards;

/// <summary>What is unusual about how a site meets the bus, in words.</summary>
public static class SiteWiring
{
    /// <summary>A clause for each; none for a site whose lines all run straight.</summary>
    /// <param name="site">The site.</param>
    public static ImmutableArray<string> Clauses(Site site)
    {
        var clauses = ImmutableArray.CreateBuilder<string>();
        if (site.DataLines is { } data)
        {
            clauses.Add(DataLineOrders.NameOf(data) == "reversed"
                ? "the data lines are reversed: the chip's D0 meets the bus's highest line, and the chip file's bits are reversed to suit"
                : $"the data lines are {DataLineOrders.NameOf(data) ?? $"in another order, from D0 of its lane on: {Lines('D', data)}"}; the chip file's bits are ordered to suit");
        }

        if (!site.AddressLines.IsEmpty)
        {
            clauses.Add($"the address lines are in another order, from the lowest of the bus on: {Lines('A', site.AddressLines)}; the chip file's words are ordered to suit");
        }

        foreach (var (line, tie) in site.Ties)
        {
            clauses.Add(FormattableString.Invariant($"A{line} of the chip is {Words(tie)}"));
        }

        if (!site.Latched.IsEmpty)
        {
            clauses.Add($"a bank latch drives {Lines('A', site.Latched)} of the chip");
        }

        if (site.Select is { } select)
        {
            clauses.Add(Words(select));
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

    /// <summary>Lines by their names: <c>A0, A2, A1</c>.</summary>
    /// <param name="letter">A or D.</param>
    /// <param name="lines">Their numbers.</param>
    public static string Lines(char letter, IEnumerable<int> lines) => string.Join(", ", lines.Select(line => FormattableString.Invariant($"{letter}{line}")));

    private static string Lines(char letter, LineOrder order) => Lines(letter, Enumerable.Range(0, order.Count).Select(line => order[line]));

    private static string Words(LineTie tie) => tie switch
    {
        LineTie.Low => "tied low",
        LineTie.High => "tied high",
        _ => "open: what it reads may change with touch, time and temperature",
    };

    private static string Words(SiteSelect select)
    {
        var when = select.Line is { } line ? $"when {line} is {(select.IsHigh ? "high" : "low")}" : FormattableString.Invariant($"from ${select.Start:X} to ${select.End:X}");
        return $"enabled {when}{(select.HasInverter ? ", through an inverter" : "")}";
    }
}
