using Cartwright.Headers;

namespace Cartwright.Platforms.MegaDrive;

/// <summary>
/// A field of space-padded ASCII that also has a form in words. Reading gives the words only where writing them gives the
/// same bytes back; otherwise the letters, with <c>raw</c> before them where they are none of the field's own, or else
/// <c>hex</c> and the bytes.
/// </summary>
internal abstract class WordedTextCodec : FieldCodec
{
    private const string RawMark = "raw ";
    private const string HexMark = "hex ";

    /// <summary>The plain letters of any text field of this header.</summary>
    protected static TextCodec Letters { get; } = new(0x20);

    /// <inheritdoc/>
    public sealed override string Read(ReadOnlySpan<byte> field)
    {
        var letters = Letters.Read(field);
        foreach (var form in (ReadOnlySpan<string?>)[Words(field), letters, RawMark + letters])
        {
            if (form is not null && Restores(form, field))
            {
                return form;
            }
        }

        return HexMark + Convert.ToHexString(field);
    }

    /// <inheritdoc/>
    public sealed override string? Write(string text, Span<byte> field)
    {
        if (text.StartsWith(HexMark, StringComparison.OrdinalIgnoreCase))
        {
            return new BytesCodec(field.Length).Write(text[HexMark.Length..], field);
        }

        return text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase)
            ? Letters.Write(text[RawMark.Length..], field)
            : WriteWords(text, field);
    }

    /// <inheritdoc/>
    public sealed override bool IsBlank(ReadOnlySpan<byte> field, byte fill) => Letters.IsBlank(field, fill);

    /// <summary>The field in words; null when it has none.</summary>
    /// <param name="field">The field's bytes.</param>
    protected abstract string? Words(ReadOnlySpan<byte> field);

    /// <summary>Writes words, or letters the field is known to hold.</summary>
    /// <param name="text">The text without a mark.</param>
    /// <param name="field">The field's bytes.</param>
    /// <returns>Null when written; otherwise what is wrong with the text, as a clause.</returns>
    protected abstract string? WriteWords(string text, Span<byte> field);

    private bool Restores(string form, ReadOnlySpan<byte> field)
    {
        Span<byte> copy = stackalloc byte[field.Length];
        return Write(form, copy) is null && copy.SequenceEqual(field);
    }
}
