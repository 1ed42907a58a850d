using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>A version or a date of the author tag, in decimal digits (SDSC Header, smspower.org).</summary>
/// <param name="form">Which.</param>
public sealed class BcdCodec(BcdForm form) : FieldCodec
{
    private const string RawMark = "hex ";

    /// <inheritdoc/>
    public override string Expected => form == BcdForm.Version ? "a version such as 1.02" : "a date such as 2026-11-25";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field)
    {
        Span<int> numbers = stackalloc int[field.Length];
        for (var i = 0; i < field.Length; i++)
        {
            if (!Bcd.TryRead(field[i], out numbers[i]))
            {
                return RawMark + Convert.ToHexString(field);
            }
        }

        return form == BcdForm.Version
            ? string.Create(CultureInfo.InvariantCulture, $"{numbers[0]}.{numbers[1]:D2}")
            : IsDay((100 * numbers[3]) + numbers[2], numbers[1], numbers[0])
                ? string.Create(CultureInfo.InvariantCulture, $"{numbers[3]:D2}{numbers[2]:D2}-{numbers[1]:D2}-{numbers[0]:D2}")
                : RawMark + Convert.ToHexString(field);
    }

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (IsRaw(text))
        {
            return text.Length == RawMark.Length + (2 * field.Length) && Convert.FromHexString(text.AsSpan(RawMark.Length), field, out _, out _) == System.Buffers.OperationStatus.Done
                ? null
                : $"it is not {field.Length} bytes of hexadecimal digits";
        }

        return form == BcdForm.Version ? WriteVersion(text, field) : WriteDate(text, field);
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);

    private static string? WriteVersion(string text, Span<byte> field)
    {
        var parts = text.Split('.');
        if (parts.Length != 2 || !Two(parts[0], out var major) || !Two(parts[1], out var minor))
        {
            return "it is no version of two numbers from 0 to 99 with a point between them";
        }

        field[0] = Bcd.Of(major);
        field[1] = Bcd.Of(minor);
        return null;
    }

    private static string? WriteDate(string text, Span<byte> field)
    {
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return "it is no date";
        }

        field[0] = Bcd.Of(date.Day);
        field[1] = Bcd.Of(date.Month);
        field[2] = Bcd.Of(date.Year % 100);
        field[3] = Bcd.Of(date.Year / 100);
        return null;
    }

    private static bool IsDay(int year, int month, int day) =>
        year > 0 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month);

    private static bool Two(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number <= 99;
}
