namespace Cartwright.Headers;

/// <summary>A run of bits of one byte.</summary>
/// <param name="Byte">The byte, counted from the field's first.</param>
/// <param name="LowBit">The run's lowest bit, 0 to 7.</param>
/// <param name="Bits">Its length in bits, 1 to 8.</param>
public readonly record struct BitSlice(int Byte, int LowBit, int Bits)
{
    /// <summary>The bits in place, as a mask of the byte.</summary>
    public byte Mask => (byte)(((1 << Bits) - 1) << LowBit);
}
