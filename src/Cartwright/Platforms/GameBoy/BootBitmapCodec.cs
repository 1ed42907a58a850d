using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.GameBoy;

/// <summary>The boot bitmap as a word: <c>write</c> for the bytes the console compares, <c>keep</c> for those the program holds, or other bytes in hexadecimal.</summary>
public sealed class BootBitmapCodec : FieldCodec
{
    /// <summary>The word for the bytes the console compares.</summary>
    public const string WriteWord = "write";

    /// <summary>The word for leaving the program's bytes.</summary>
    public const string KeepWord = "keep";

    private static readonly BytesCodec Raw = new(BootBitmap.Length);

    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names { get; } =
    [
        new NamedValue(0, WriteWord, "the bytes the console compares"),
        new NamedValue(1, KeepWord, "whatever the program holds there"),
    ];

    /// <inheritdoc/>
    public override string Expected => $"`{WriteWord}`, `{KeepWord}`, or {Raw.Expected}";

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => BootBitmap.IsRight(field) ? WriteWord : Raw.Read(field);

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (string.Equals(text, WriteWord, StringComparison.OrdinalIgnoreCase))
        {
            BootBitmap.Bytes.CopyTo(field);
            return null;
        }

        return string.Equals(text, KeepWord, StringComparison.OrdinalIgnoreCase) ? null : Raw.Write(text, field);
    }
}
