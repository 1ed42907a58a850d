using System.Globalization;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>The end of the serial number, a hyphen and two digits: 1 for <c>-01</c>.</summary>
internal sealed class RevisionCodec : WordedTextCodec
{
    /// <inheritdoc/>
    public override string Expected => "a number from 0 to 99";

    /// <inheritdoc/>
    protected override string? Words(ReadOnlySpan<byte> field) =>
        field[0] == '-' && int.TryParse(field[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number.ToString(CultureInfo.InvariantCulture)
            : null;

    /// <inheritdoc/>
    protected override string? WriteWords(string text, Span<byte> field) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= 99
            ? Letters.Write(string.Create(CultureInfo.InvariantCulture, $"-{number:D2}"), field)
            : "the header has two digits for the revision, 00 to 99";
}
