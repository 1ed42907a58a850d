using System.Globalization;
using Cartwright.Chips;

namespace Cartwright.Plans;

/// <summary>Typical times of a part, read from the words of its catalogue entry.</summary>
/// <param name="UnitMicroseconds">For one byte or word; null when not known, or when the part is written by pages.</param>
/// <param name="BurstMicroseconds">For one page or buffer; null when not known, or when the part is written by units.</param>
/// <param name="BurstBytes">Bytes of a page or buffer; 0 when the part has none.</param>
/// <param name="SectorMilliseconds">For erasing one sector; null when not known.</param>
/// <param name="ChipMilliseconds">For erasing the whole chip electrically; null when not known.</param>
/// <param name="AreMaxima">True when the entry gives the longest programming time in place of a typical one.</param>
/// <remarks>Where an entry gives several figures for one thing, the longest is taken: an estimate had better be too long.</remarks>
public sealed record WriteFigures(
    double? UnitMicroseconds, double? BurstMicroseconds, int BurstBytes, double? SectorMilliseconds, double? ChipMilliseconds, bool AreMaxima)
{
    /// <summary>The figures of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="width">Data lines in use: 8 or 16.</param>
    public static WriteFigures Of(Part part, int width)
    {
        var granularity = part.Programming.Granularity;
        var (unit, burst, bytes) = (default(double?), default(double?), BurstOf(granularity));
        foreach (var text in WithoutRemarks(part.Programming.TypicalMicroseconds).Split(['/', ';'], StringSplitOptions.TrimEntries))
        {
            var (value, words) = Figure(text);
            if (words.StartsWith("per ", StringComparison.Ordinal) || words.StartsWith("max per ", StringComparison.Ordinal))
            {
                var isForByte = words.StartsWith("per byte", StringComparison.Ordinal);
                burst = Longest(burst, bytes == 0 ? null : value * (isForByte ? bytes : 1));
                unit = Longest(unit, bytes == 0 ? value : null);
            }
            else if (words.Length == 0 || words == (width == 16 ? "word" : "byte"))
            {
                unit = Longest(unit, value);
            }
        }

        return new WriteFigures(burst is null ? unit : null, burst, burst is null ? 0 : bytes,
            Longest(part.Sectors.TypicalSectorEraseMilliseconds), Longest(part.Sectors.TypicalChipEraseMilliseconds),
            part.Programming.TypicalMicroseconds.Contains("max", StringComparison.Ordinal));
    }

    /// <summary>Bytes of the page or buffer that words such as <c>byte/word; 32-byte buffer</c> or <c>1-64 byte page</c> name; 0 when they name none.</summary>
    internal static int BurstOf(string granularity)
    {
        var words = WithoutRemarks(granularity).Split([' ', '-', ';'], StringSplitOptions.RemoveEmptyEntries);
        for (var i = 2; i < words.Length; i++)
        {
            if (words[i] is "page" or "buffer" && words[i - 1] == "byte" && int.TryParse(words[i - 2], NumberStyles.None, CultureInfo.InvariantCulture, out var bytes))
            {
                return bytes;
            }
        }

        return 0;
    }

    // The longest of all alternatives: "500 (param) / 1000 (main)".
    private static double? Longest(string text)
    {
        var longest = default(double?);
        foreach (var alternative in WithoutRemarks(text).Split('/', StringSplitOptions.TrimEntries))
        {
            longest = Longest(longest, Figure(alternative).Value);
        }

        return longest;
    }

    private static double? Longest(double? one, double? other) => one is null || other > one ? other : one;

    // "9 byte", "500-600", "5000 per write": the number, the upper one of a range, and the words behind it.
    private static (double? Value, string Words) Figure(string text)
    {
        var blank = text.IndexOf(' ', StringComparison.Ordinal);
        var number = blank < 0 ? text : text[..blank];
        var upper = number[(number.IndexOf('-', StringComparison.Ordinal) + 1)..];
        var read = double.TryParse(upper, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value);
        return (read ? value : null, blank < 0 ? "" : text[(blank + 1)..]);
    }

    private static string WithoutRemarks(string text)
    {
        while (text.IndexOf('(', StringComparison.Ordinal) is >= 0 and var open && text.IndexOf(')', open) is > 0 and var close)
        {
            text = text.Remove(open, close + 1 - open);
        }

        return text.Trim();
    }
}
