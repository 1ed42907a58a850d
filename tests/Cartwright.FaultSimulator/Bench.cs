namespace Cartwright.FaultSimulator;

/// <summary>How a chip is written and read.</summary>
/// <param name="Shape">Its words.</param>
/// <param name="Seed">What chance follows.</param>
public sealed record Bench(ChipShape Shape, ulong Seed = 1)
{
    /// <summary>Written through the same board, not elsewhere by a sound programmer.</summary>
    public bool WrittenInPlace { get; init; }

    /// <summary>Written in place into a RAM: the last word that lands on a cell stays, and clears nothing of the others.</summary>
    public bool Ram { get; init; }
}
