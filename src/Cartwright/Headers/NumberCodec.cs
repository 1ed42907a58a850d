using System.Collections.Immutable;
using System.Globalization;

namespace Cartwright.Headers;

/// <summary>A field that holds a number.</summary>
/// <param name="placement">How the number lies in the bytes.</param>
/// <param name="form">How it is written for people.</param>
public sealed class NumberCodec(FieldPlacement placement, ValueText form) : FieldCodec
{
    /// <summary>True where all ones is a value that programs hold on purpose, and not what is left of a chip's erased state.</summary>
    public bool OnesAreSaid { get; init; }

    /// <summary>True where zero is a value that programs hold on purpose, and not what is left of blank room; it cannot be told where the region is filled with zero.</summary>
    public bool ZeroIsSaid { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names => form.Names;

    /// <inheritdoc/>
    public override ValueForm Form => form.Form;

    /// <inheritdoc/>
    public override string Expected => form.Expected;

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => form.Format(placement.Read(field));

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field)
    {
        if (!form.TryParse(text, out var number))
        {
            return "it is none of the values this field can have";
        }

        if (number > placement.Largest)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it is larger than 0x{placement.Largest:X} ({placement.Largest}), the most the field can hold");
        }

        placement.Write(field, number);
        return null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => form.IsRaw(text);

    /// <inheritdoc/>
    public override bool IsBlank(ReadOnlySpan<byte> field, byte fill) =>
        base.IsBlank(field, fill)
        && !(OnesAreSaid && placement.Read(field) == placement.Largest)
        && !(ZeroIsSaid && fill != 0 && !field.ContainsAnyExcept((byte)0));

    /// <inheritdoc/>
    public override void Mask(Span<byte> field) => placement.Write(field, placement.Largest);
}
