using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>A date of the author's tag: day, month, and the year's last two digits before its first two, all decimal (SDSC ROM Tag Specification).</summary>
public sealed class TagDateCodec : FieldCodec
{
    private const string RawMark = "hex ";
    private const string DateForm = "yyyy-MM-dd";

    /// <inheritdoc/>
    public override string Expected => "a date as year-month-day such as 2026-01-31";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        var year = (Bcd.Read(field[3]) * 100) + Bcd.Read(field[2]);
        var (month, day) = (Bcd.Read(field[1]), Bcd.Read(field[0]));
        return Bcd.Is(field) && year > 0 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month)
            ? string.Create(CultureInfo.InvariantCulture, $"{year:D4}-{month:D2}-{day:D2}")
            : RawMark + Convert.ToHexString(field);
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (IsRaw(text))
        {
            return new BytesCodec(field.Length).Write(text[RawMark.Length..], field);
        }

        if (!DateOnly.TryParseExact(text.Trim(), DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return "it is no date of that form";
        }

        field[0] = Bcd.Write(date.Day);
        field[1] = Bcd.Write(date.Month);
        field[2] = Bcd.Write(date.Year % 100);
        field[3] = Bcd.Write(date.Year / 100);
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);
}
