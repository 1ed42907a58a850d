namespace Cartwright.Headers;

/// <summary>A number that fills whole bytes.</summary>
/// <param name="length">Bytes, 1 to 8.</param>
/// <param name="order">Which byte comes first.</param>
public sealed class BytesPlacement(int length, ByteOrder order) : FieldPlacement
{
    /// <summary>One byte.</summary>
    public static BytesPlacement Byte { get; } = new(1, ByteOrder.LittleEndian);

    /// <inheritdoc/>
    public override int Bits => length * 8;

    /// <inheritdoc/>
    public override ulong Read(ReadOnlySpan<byte> field)
    {
        var value = 0UL;
        for (var i = 0; i < length; i++)
        {
            value = (value << 8) | field[order == ByteOrder.BigEndian ? i : length - 1 - i];
        }

        return value;
    }

    /// <inheritdoc/>
    public override void Write(Span<byte> field, ulong value)
    {
        for (var i = 0; i < length; i++)
        {
            field[order == ByteOrder.BigEndian ? length - 1 - i : i] = (byte)(value >> (8 * i));
        }
    }
}
