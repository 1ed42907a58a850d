using System.Globalization;

namespace Cartwright.Saves;

/// <summary>How a whole file is written: the memory in a layout, and the record of a clock behind it or none.</summary>
/// <param name="Layout">The layout.</param>
/// <param name="ClockLength">Bytes of the clock's record: 0, 44 or 48.</param>
public sealed record SaveForm(SaveLayout Layout, int ClockLength)
{
    private const string ClockMark = "+clock";

    /// <summary>How a form is written.</summary>
    public const string Words = "packed, odd-ff, odd-00, odd-doubled (even- alike; any two hexadecimal digits name the filler), swap16, swap32, reversed8, nibbles-low or nibbles-high, with +clock44 or +clock48 behind it where the file ends in a clock";

    /// <summary>The form of a word; null where there is none.</summary>
    /// <param name="word">The layout's word, and <c>+clock44</c> or <c>+clock48</c>.</param>
    public static SaveForm? Find(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var mark = word.IndexOf(ClockMark, StringComparison.OrdinalIgnoreCase);
        int? clock = mark < 0 ? 0 : word[(mark + ClockMark.Length)..] switch { "44" => SaveClock.ShortLength, "48" => SaveClock.LongLength, _ => null };
        return clock is { } length && SaveLayouts.Find(mark < 0 ? word : word[..mark]) is { } layout ? new SaveForm(layout, length) : null;
    }

    /// <summary>Its word.</summary>
    public override string ToString() => ClockLength == 0 ? Layout.Id : string.Create(CultureInfo.InvariantCulture, $"{Layout.Id}{ClockMark}{ClockLength}");
}
