using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>The address and data lines between a chip and its reader.</summary>
/// <param name="shape">The words of the chip.</param>
/// <param name="faults">What is wrong with the lines; faults of other stages do not matter here.</param>
/// <param name="chance">What open lines follow.</param>
public sealed class Lines(ChipShape shape, ImmutableArray<Fault> faults, Chance chance)
{
    private readonly AddressPath address = new([.. faults.Where(static fault => FaultStages.Of(fault) == Stage.Address)], chance);
    private readonly DataPath data = new(shape, [.. faults.Where(static fault => FaultStages.Of(fault) == Stage.Data)], chance);

    /// <summary>One word: R[a] = g(array[f(a)]).</summary>
    /// <param name="array">The words of the chip.</param>
    /// <param name="a">The reader's address.</param>
    public int Read(int[] array, int a) => data.ToReader(array[address.ToChip(a) % array.Length], a);
}
