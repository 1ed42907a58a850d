using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The product code: two pairs of decimal digits, the lower pair first, and the ten-thousands in the upper half of the third byte (ROM Header, smspower.org).</summary>
public sealed class ProductCodeCodec : FieldCodec
{
    private const int Largest = 159_999;
    private const string RawMark = "hex ";

    /// <inheritdoc/>
    public override string Expected => "a number from 0 to 159999";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) =>
        Bcd.TryRead(field[0], out var low) && Bcd.TryRead(field[1], out var high)
            ? ((((field[2] >> 4) * 100) + high) * 100 + low).ToString(CultureInfo.InvariantCulture)
            : RawMark + Convert.ToHexString([field[0], field[1], (byte)(field[2] & 0xF0)]);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        Span<byte> bytes = stackalloc byte[3];
        if (IsRaw(text))
        {
            if (text.Length != RawMark.Length + 6 || Convert.FromHexString(text.AsSpan(RawMark.Length), bytes, out _, out _) != System.Buffers.OperationStatus.Done)
            {
                return "it is not three bytes of hexadecimal digits";
            }
        }
        else if (Manifests.Number.TryParse(text, out long number) && number <= Largest)
        {
            bytes[0] = Bcd.Of((int)(number % 100));
            bytes[1] = Bcd.Of((int)(number / 100 % 100));
            bytes[2] = (byte)(number / 10_000 << 4);
        }
        else
        {
            return "it is no number from 0 to 159999";
        }

        bytes[..2].CopyTo(field);
        field[2] = (byte)((bytes[2] & 0xF0) | (field[2] & 0x0F));
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override void Mask(Span<byte> field)
    {
        field[..2].Fill(0xFF);
        field[2] = 0xF0;
    }
}
