using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>
/// Where a game runs: up to three of the letters J, U and E, or in the new style one hexadecimal digit with a bit for each
/// kind of console. A lone E is read as Europe, never as the digit (ROM header reference).
/// </summary>
internal sealed class RegionLettersCodec : WordedTextCodec
{
    private const string DigitMark = "as digit";

    // Bit of the digit, letter of the old style, word.
    private static readonly ImmutableArray<(int Bit, char? Letter, string Word)> Areas =
        [(1, 'J', "japan"), (2, null, "asia-pal"), (4, 'U', "americas"), (8, 'E', "europe")];

    /// <inheritdoc/>
    public override string Expected =>
        "words such as `japan americas europe`; with `as digit` behind them for the new style, which also knows `asia-pal`; or the letters such as `JUE` or `F`";

    /// <inheritdoc/>
    protected override string? Words(ReadOnlySpan<byte> field)
    {
        var text = Letters.Read(field);
        return text.Length switch
        {
            0 => "",
            1 when Digit(text) is { } digit and > 0 && text != "E" =>
                string.Join(' ', Areas.Where(area => (digit & area.Bit) != 0).Select(static area => area.Word).Append(DigitMark)),
            _ => text.All(letter => Area(letter) is not null) ? string.Join(' ', text.Select(letter => Area(letter)!.Value.Word)) : null,
        };
    }

    /// <inheritdoc/>
    protected override string? WriteWords(string text, Span<byte> field)
    {
        if (Digit(text) is not null || (text.Length > 0 && text.All(static letter => Area(letter) is not null)))
        {
            return Letters.Write(text, field);
        }

        var asDigit = text.EndsWith(DigitMark, StringComparison.OrdinalIgnoreCase);
        var bits = 0;
        foreach (var word in (asDigit ? text[..^DigitMark.Length] : text).Split([',', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            var area = Areas.FirstOrDefault(area => string.Equals(area.Word, word, StringComparison.OrdinalIgnoreCase));
            if (area.Bit == 0)
            {
                return $"`{word}` is no region";
            }

            bits |= area.Bit;
        }

        return asDigit ? WriteDigit(bits, field) : WriteLetters(bits, field);
    }

    private static string? WriteLetters(int bits, Span<byte> field)
    {
        var chosen = Areas.Where(area => (bits & area.Bit) != 0).ToList();
        return chosen.Exists(static area => area.Letter is null)
            ? "`asia-pal` has no letter of its own; only the new style has it, with `as digit`"
            : Letters.Write(string.Concat(chosen.Select(static area => area.Letter)), field);
    }

    private static string? WriteDigit(int bits, Span<byte> field) => bits switch
    {
        0 => "no region is named",
        0xE => "the digit would be E, which is read as Europe alone",
        _ => Letters.Write(bits.ToString("X", CultureInfo.InvariantCulture), field),
    };

    private static int? Digit(string text) =>
        text.Length == 1 && char.IsAsciiHexDigitUpper(text[0]) ? Convert.ToInt32(text, 16) : null;

    private static (int Bit, char? Letter, string Word)? Area(char letter) =>
        Areas.FirstOrDefault(area => area.Letter == letter) is { Bit: > 0 } found ? found : null;
}
