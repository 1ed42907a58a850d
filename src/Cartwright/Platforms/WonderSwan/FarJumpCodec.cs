using System.Buffers;
using System.Buffers.Binary;
using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.WonderSwan;

/// <summary>The far jump at the start of the footer: segment and offset, or its five bytes where it is no jump.</summary>
public sealed class FarJumpCodec : FieldCodec
{
    private const int Length = 5;
    private const int Digits = 4;
    private const byte FarJump = 0xEA;

    /// <inheritdoc/>
    public override string Expected => "segment and offset such as F000:0000, or five bytes of hexadecimal digits such as EA000000F0";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => field[0] == FarJump
        ? string.Create(CultureInfo.InvariantCulture, $"{BinaryPrimitives.ReadUInt16LittleEndian(field[3..]):X4}:{BinaryPrimitives.ReadUInt16LittleEndian(field[1..]):X4}")
        : Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon >= 0 && TryHex(text[..colon], out var segment) && TryHex(text[(colon + 1)..], out var offset))
        {
            field[0] = FarJump;
            BinaryPrimitives.WriteUInt16LittleEndian(field[1..], offset);
            BinaryPrimitives.WriteUInt16LittleEndian(field[3..], segment);
            return null;
        }

        var digits = text.Replace(" ", "", StringComparison.Ordinal);
        return digits.Length == 2 * Length && Convert.FromHexString(digits, field, out _, out _) == OperationStatus.Done
            ? null
            : "it is neither a segment and an offset of four hexadecimal digits each nor five bytes";
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => !text.Contains(':', StringComparison.Ordinal);

    private static bool TryHex(string text, out ushort value)
    {
        var digits = text.Trim().TrimStart('$');
        value = 0;
        return digits.Length <= Digits && ushort.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out value);
    }
}
