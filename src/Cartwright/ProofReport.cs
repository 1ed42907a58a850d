using System.Collections.Immutable;
using Cartwright.Proofs;

namespace Cartwright;

/// <summary>What a proof came to.</summary>
/// <param name="Expected">What the cartridge should hold.</param>
/// <param name="Units">The units that were read; one without a name where no units are told apart.</param>
public sealed record ProofReport(ExpectedCart Expected, ImmutableArray<UnitProof> Units)
{
    /// <summary>True when every chip of every unit is as it should be.</summary>
    public bool IsEqual => Units.All(static unit => unit.IsEqual);
}
