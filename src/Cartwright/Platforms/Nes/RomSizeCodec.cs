using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>The size of the PRG or CHR ROM in a container header.</summary>
/// <param name="placement">How the code lies in the bytes.</param>
/// <param name="unit">Bytes of a unit.</param>
internal sealed class RomSizeCodec(BitsPlacement placement, long unit) : FieldCodec
{
    private const string RawMark = "raw ";

    /// <summary>True where the header has the four bits that allow the exponent form.</summary>
    private bool Extended => placement.Bits > 8;

    /// <inheritdoc/>
    public override string Expected => $"a multiple of {ByteSize.Words(unit)} up to {ByteSize.Words(Most * unit)}"
        + (Extended ? ", or 1, 3, 5 or 7 times a power of two" : "") + ", or `raw` and the code such as `raw 0x02`";

    private long Most => Extended ? RomSize.LargestPlain : 0xFF;

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        var code = (int)placement.Read(field);
        return RomSize.Bytes(code, unit) is { } bytes && RomSize.Code(bytes, unit) == code
            ? ByteSize.Format(bytes)
            : string.Create(CultureInfo.InvariantCulture, $"{RawMark}0x{code:X3}");
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (IsRaw(text))
        {
            return Number.TryParse(text[RawMark.Length..], out long raw) && (ulong)raw <= placement.Largest
                ? Put(raw, field)
                : "it is no code the field can hold";
        }

        if (!SizeText.TryRead(text, out var bytes))
        {
            return "it is no size";
        }

        return RomSize.Code(bytes, unit) is { } code && (ulong)code <= placement.Largest ? Put(code, field)
            : Extended ? $"no code says {ByteSize.Describe(bytes)}; the next size there is a code for is {ByteSize.Format(RomSize.Next(bytes, unit))}"
            : $"this container has no code for {ByteSize.Describe(bytes)}; NES 2.0 (`container: nes2`) may have one";
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override void Mask(Span<byte> field) => placement.Write(field, placement.Largest);

    private string? Put(long code, Span<byte> field)
    {
        placement.Write(field, (ulong)code);
        return null;
    }
}
