namespace Cartwright.Inspection;

/// <summary>How much of a region is content, and how much is repetition and fill.</summary>
/// <param name="Period">Bytes after which the region repeats itself; its length where it does not.</param>
/// <param name="Content">Bytes up to the end of what is no fill, within one period; 0 for a blank region.</param>
/// <param name="TrailingFill">The value that fills the end of the period; null where it does not end in fill.</param>
public sealed record ContentMeasure(int Period, int Content, byte? TrailingFill)
{
    // Shorter runs at the end of a program are as likely its own.
    private const int LeastFill = 16;

    /// <summary>Measures a region.</summary>
    /// <param name="region">Its bytes.</param>
    public static ContentMeasure Of(ReadOnlySpan<byte> region)
    {
        var period = region.Length;
        while (period % 2 == 0 && period > 1 && region[..(period / 2)].SequenceEqual(region[(period / 2)..period]))
        {
            period /= 2;
        }

        var whole = region[..period];
        var fill = whole.IsEmpty ? (byte)0 : whole[^1];
        var content = whole.LastIndexOfAnyExcept(fill) + 1;
        return fill is (0x00 or 0xFF) && period - content >= Math.Min(LeastFill, period)
            ? new ContentMeasure(period, content, fill)
            : new ContentMeasure(period, period, null);
    }
}
