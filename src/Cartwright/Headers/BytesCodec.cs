namespace Cartwright.Headers;

/// <summary>A field of plain bytes, written as hexadecimal digits.</summary>
/// <param name="length">Bytes of the field.</param>
public sealed class BytesCodec(int length) : FieldCodec
{
    /// <inheritdoc/>
    public override string Expected => $"{length} bytes as hexadecimal digits, such as {string.Join(' ', Enumerable.Repeat("00", Math.Min(length, 4)))}";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        var digits = text.Replace(" ", "", StringComparison.Ordinal);
        return digits.Length == length * 2 && Convert.FromHexString(digits, field, out _, out _) == System.Buffers.OperationStatus.Done
            ? null
            : $"it is not {length} bytes of hexadecimal digits";
    }
}
