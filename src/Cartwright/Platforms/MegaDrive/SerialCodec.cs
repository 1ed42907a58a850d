using System.Globalization;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The serial number without its revision: <c>GM 00000000</c>.</summary>
internal sealed class SerialCodec : WordedTextCodec
{
    /// <summary>Bytes of type, blank and product code.</summary>
    public const int Length = 11;

    /// <inheritdoc/>
    public override string Expected => "two letters of type, a blank and a product code of eight letters, such as `GM 00000000`; the revision is a field of its own";

    /// <inheritdoc/>
    protected override string? Words(ReadOnlySpan<byte> field) => null;

    /// <inheritdoc/>
    protected override string? WriteWords(string text, Span<byte> field) => text.Length > Length
        ? string.Create(CultureInfo.InvariantCulture, $"it has {text.Length} letters and the field holds {Length}; the hyphen and the two digits behind them are the field `revision`")
        : Letters.Write(text, field);
}
