using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.Nes;

/// <summary>A value the older container has no bits for, so that it follows from the fields before it: it can be stated only as what it is.</summary>
/// <param name="form">How the value is written.</param>
/// <param name="derive">Works it out from the header's 16 bytes.</param>
/// <param name="why">Why another value is not possible, as a clause.</param>
internal sealed class DerivedCodec(ValueText form, Func<ReadOnlySpan<byte>, ulong> derive, string why) : FieldCodec
{
    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names => form.Names;

    /// <inheritdoc/>
    public override string Expected => form.Expected;

    /// <inheritdoc/>
    public override string Read(ReadOnlySpan<byte> field) => form.Format(derive(field));

    /// <inheritdoc/>
    public override string? Write(string text, Span<byte> field) =>
        !form.TryParse(text, out var value) ? "it is none of the values this field can have"
        : value == derive(field) ? null
        : $"{why}, so that it reads as `{Read(field)}`";

    /// <inheritdoc/>
    public override void Mask(Span<byte> field) => field.Clear();
}
