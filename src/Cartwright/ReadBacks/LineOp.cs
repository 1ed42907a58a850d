using System.Runtime.CompilerServices;

namespace Cartwright.ReadBacks;

/// <summary>What one wiring fault does to an address on its way to the chip, or to a word on its way to the reader.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Mask">The lines it acts on, one bit a line.</param>
/// <param name="I">The line acted on, where there is one.</param>
/// <param name="K">The other line, where there is one.</param>
/// <param name="Map">Where each bit goes; of a permutation.</param>
internal readonly record struct LineOp(LineOpKind Kind, uint Mask, int I = 0, int K = 0, LineMap? Map = null)
{
    public static LineOp Lines(LineOpKind kind, uint mask) => new(kind, mask);

    public static LineOp Pair(LineOpKind kind, int i, int k) => new(kind, (1u << i) | (1u << k), i, k);

    public static LineOp Of(LineMap map) => new(LineOpKind.Permuted, (uint)((1UL << map.To.Length) - 1), Map: map);

    /// <summary>A data line joined to an address line.</summary>
    public static LineOp Bridge(LineOpKind kind, int data, int address) => new(kind, 1u << data, data, address);

    /// <summary>The value behind the fault.</summary>
    /// <param name="value">The address or word before it.</param>
    /// <param name="address">The reader's address.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public uint Apply(uint value, uint address) => Kind switch
    {
        LineOpKind.StuckLow => value & ~Mask,
        LineOpKind.StuckHigh => value | Mask,
        LineOpKind.Inverted => value ^ Mask,
        LineOpKind.ShortedLow => (value & Mask) == Mask ? value : value & ~Mask,
        LineOpKind.ShortedHigh => (value & Mask) == 0 ? value : value | Mask,
        LineOpKind.Swapped => value ^ ((((value >> I) ^ (value >> K)) & 1) * Mask),
        LineOpKind.Permuted => Map!.Apply(value),
        LineOpKind.Follows => (value & ~(1u << I)) | (((value >> K) & 1) << I),
        LineOpKind.FollowsAddress => (value & ~(1u << I)) | (((address >> K) & 1) << I),
        LineOpKind.BridgedLow => value & ~((~(address >> K) & 1) << I),
        LineOpKind.BridgedHigh => value | (((address >> K) & 1) << I),
        _ => throw new InvalidOperationException($"{Kind} has no meaning"),
    };

    /// <summary>The same fault met from the other side: a permutation is undone, the rest does the same both ways.</summary>
    public LineOp Backwards() => Kind == LineOpKind.Permuted ? Of(Map!.Inverse()) : this;
}
