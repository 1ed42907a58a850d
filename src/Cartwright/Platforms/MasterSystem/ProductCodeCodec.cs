using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>
/// A product code of 0 to 159999: the last two decimal digits, the two before them, and in the upper half of the third byte what is
/// left as a number of 0 to 15 (ROM Header, smspower.org). The lower half of that byte is another field.
/// </summary>
public sealed class ProductCodeCodec : FieldCodec
{
    private const string RawMark = "hex ";
    private const int RawDigits = 5;
    private const int Largest = 159999;

    /// <inheritdoc/>
    public override string Expected => "a number from 0 to 159999, or `hex` and the five digits as they stand";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => Bcd.Is(field[0], field[1])
        ? ((field[2] >> 4) * 10000 + Bcd.Read(field[1]) * 100 + Bcd.Read(field[0])).ToString(CultureInfo.InvariantCulture)
        : RawMark + Convert.ToHexString(field)[..RawDigits];

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (IsRaw(text))
        {
            return WriteRaw(text.AsSpan(RawMark.Length).Trim(), field);
        }

        if (!int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return "it is no decimal number";
        }

        if (number > Largest)
        {
            return "it is larger than 159999, the most the field can hold";
        }

        Put(field, Bcd.Write(number % 100), Bcd.Write(number / 100 % 100), number / 10000);
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override void Mask(Span<byte> field) => Put(field, 0xFF, 0xFF, 0xF);

    private static string? WriteRaw(ReadOnlySpan<char> digits, Span<byte> field)
    {
        if (digits.Length != RawDigits || !int.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var number))
        {
            return "behind `hex` there are not five hexadecimal digits";
        }

        Put(field, (byte)(number >> 12), (byte)(number >> 4), number & 0xF);
        return null;
    }

    private static void Put(Span<byte> field, byte last, byte middle, int high)
    {
        field[0] = last;
        field[1] = middle;
        field[2] = (byte)((high << 4) | (field[2] & 0x0F));
    }
}
