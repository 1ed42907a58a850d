using System.Collections.Immutable;

namespace Cartwright.Headers;

/// <summary>A picture the console compares before it starts, as a word: <c>write</c> for the right bytes, <c>keep</c> for those the program holds, or other bytes in hexadecimal.</summary>
/// <param name="bitmap">The right bytes.</param>
public sealed class BitmapCodec(ImmutableArray<byte> bitmap) : FieldCodec
{
    /// <summary>The word for the bytes the console compares.</summary>
    public const string WriteWord = "write";

    /// <summary>The word for leaving the program's bytes.</summary>
    public const string KeepWord = "keep";

    private readonly BytesCodec _raw = new(bitmap.Length);

    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names { get; } =
    [
        new NamedValue(0, WriteWord, "the bytes the console compares"),
        new NamedValue(1, KeepWord, "whatever the program holds there"),
    ];

    /// <inheritdoc/>
    public override string Expected => $"`{WriteWord}`, `{KeepWord}`, or {_raw.Expected}";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => field.SequenceEqual(bitmap.AsSpan()) ? WriteWord : _raw.Read(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (string.Equals(text, WriteWord, StringComparison.OrdinalIgnoreCase))
        {
            bitmap.AsSpan().CopyTo(field);
            return null;
        }

        return string.Equals(text, KeepWord, StringComparison.OrdinalIgnoreCase) ? null : _raw.Write(text, field);
    }
}
