using System.Globalization;
using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Intellivision;

/// <summary>An address in two words of 16 bits: its low byte in the first, its high byte in the second.</summary>
public sealed class AddressWordsCodec : FieldCodec
{
    /// <summary>Bytes of both words.</summary>
    public const int Length = 4;

    private const string RawMark = "hex ";

    /// <inheritdoc/>
    public override string Expected => "an address such as $5014";

    /// <summary>The address; null when the words hold more than a byte each.</summary>
    /// <param name="field">The field's bytes.</param>
    public static int? Address(ReadOnlySpan<byte> field) => (field[0] | field[2]) == 0 ? field[1] | (field[3] << 8) : null;

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) =>
        Address(field) is { } address ? string.Create(CultureInfo.InvariantCulture, $"${address:X4}") : RawMark + Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (IsRaw(text))
        {
            return new BytesCodec(field.Length).Write(text[RawMark.Length..], field);
        }

        if (!Number.TryParse(text, out ulong address) || address > ushort.MaxValue)
        {
            return "it is no address of 16 bits";
        }

        (field[0], field[1], field[2], field[3]) = (0, (byte)address, 0, (byte)(address >> 8));
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);
}
