using System.Globalization;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>A version of the author's tag: two decimal digits before the point and two behind it (SDSC ROM Tag Specification).</summary>
public sealed class TagVersionCodec : FieldCodec
{
    private const string RawMark = "hex ";

    /// <inheritdoc/>
    public override string Expected => "a version with two digits behind the point, such as 1.02";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => Bcd.Is(field)
        ? string.Create(CultureInfo.InvariantCulture, $"{Bcd.Read(field[0])}.{Bcd.Read(field[1]):D2}")
        : RawMark + Convert.ToHexString(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (IsRaw(text))
        {
            return new BytesCodec(field.Length).Write(text[RawMark.Length..], field);
        }

        var parts = text.Trim().Split('.');
        if (parts is not [{ Length: 1 or 2 }, { Length: 2 }]
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var major)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var minor))
        {
            return "it is no version of that form";
        }

        field[0] = Bcd.Write(major);
        field[1] = Bcd.Write(minor);
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);
}
