using System.Buffers;
using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The year on the 5200's title screen: two digits in display codes, or 0xFF in the second byte to go without logo and title.</summary>
internal sealed class YearCodec : FieldCodec
{
    /// <summary>The word for no title screen.</summary>
    public const string Skip = "skip";

    private const byte Zero = 0x50;
    private const byte Nine = 0x59;
    private const byte SkipMark = 0xFF;
    private const string RawMark = "hex ";

    /// <inheritdoc/>
    public override string Expected => "a year such as 83 or 1983 (its last two digits count), `skip` to start without logo and title, or `hex` and four digits";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) =>
        IsYear(field) ? string.Create(CultureInfo.InvariantCulture, $"{field[0] - Zero}{field[1] - Zero}")
        : field[0] == SkipMark && field[1] == SkipMark ? Skip
        : RawMark + Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (string.Equals(text, Skip, StringComparison.OrdinalIgnoreCase))
        {
            field.Fill(SkipMark);
            return null;
        }

        if (text.Length == RawMark.Length + 4 && IsRaw(text))
        {
            return Convert.FromHexString(text.AsSpan(RawMark.Length), field, out _, out _) == OperationStatus.Done ? null : "its hexadecimal digits are damaged";
        }

        if (text.Length is not (2 or 4) || text.AsSpan().ContainsAnyExceptInRange('0', '9'))
        {
            return "it is no year of two or four digits";
        }

        field[0] = (byte)(Zero + text[^2] - '0');
        field[1] = (byte)(Zero + text[^1] - '0');
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether both bytes are digits.</summary>
    /// <param name="field">The two bytes.</param>
    public static bool IsYear(ReadOnlySpan<byte> field) => field.IndexOfAnyExceptInRange(Zero, Nine) < 0;

    /// <summary>Whether the console goes without its title screen.</summary>
    /// <param name="field">The two bytes.</param>
    public static bool Skips(ReadOnlySpan<byte> field) => field[1] == SkipMark;
}
