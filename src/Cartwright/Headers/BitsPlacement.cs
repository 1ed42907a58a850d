using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>A number whose bits lie scattered over one or more bytes.</summary>
/// <param name="slices">The runs of bits, the least significant first.</param>
public sealed class BitsPlacement(params ImmutableArray<BitSlice> slices) : FieldPlacement
{
    /// <inheritdoc/>
    public override int Bits => slices.Sum(static slice => slice.Bits);

    /// <inheritdoc/>
    public override ulong Read(ReadOnlySpan<byte> field)
    {
        var value = 0UL;
        var shift = 0;
        foreach (var slice in slices)
        {
            value |= (ulong)((field[slice.Byte] & slice.Mask) >> slice.LowBit) << shift;
            shift += slice.Bits;
        }

        return value;
    }

    /// <inheritdoc/>
    public override void Write(Span<byte> field, ulong value)
    {
        foreach (var slice in slices)
        {
            field[slice.Byte] = (byte)((field[slice.Byte] & ~slice.Mask) | ((int)(value << slice.LowBit) & slice.Mask));
            value >>= slice.Bits;
        }
    }
}
