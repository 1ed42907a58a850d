using System.Collections.Immutable;
using Cartwright.Chips;

namespace Cartwright.Proofs;

/// <summary>The pin of a chip that carries a line.</summary>
/// <param name="PinOut">The pin-out it is counted in.</param>
/// <param name="Line">The line's name on the chip, counted in words of the chip.</param>
/// <param name="Pin">Number of the pin, from 1.</param>
public sealed record LinePin(PinOut PinOut, string Line, int Pin)
{
    /// <summary>What the data sheet calls it.</summary>
    public string Signal => PinOut.SignalAt(Pin);

    /// <summary>The pins beside it, which solder could bridge.</summary>
    public ImmutableArray<int> Neighbours => PinOut.Neighbours(Pin);

    /// <summary>Whether another pin of the same package lies beside it.</summary>
    /// <param name="other">The other pin.</param>
    public bool IsBeside(LinePin other) => other.PinOut.Name == PinOut.Name && Neighbours.Contains(other.Pin);
}
