using System.Collections.Immutable;

namespace Cartwright.Proofs;

/// <summary>The proofs of one unit: of one chip, or of every chip that a read of the whole cartridge shows.</summary>
/// <param name="Name">The unit; null where no units are told apart.</param>
/// <param name="Chips">The proofs, in the order of the board.</param>
public sealed record UnitProof(string? Name, ImmutableArray<ProofResult> Chips)
{
    /// <summary>True when every chip is as it should be.</summary>
    public bool IsEqual => Chips.All(static chip => chip.Verdict.Equal);
}
