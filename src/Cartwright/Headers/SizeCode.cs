using System.Collections.Immutable;
using Cartwright.Manifests;

namespace Cartwright.Headers;

/// <summary>A number that stands for a size by a table: 5 for <c>1MiB</c>.</summary>
/// <param name="sizes">Codes and the sizes in bytes they stand for.</param>
public sealed class SizeCode(params ImmutableArray<(ulong Code, long Bytes)> sizes) : ValueText
{
    /// <inheritdoc/>
    public override ImmutableArray<NamedValue> Names => [.. sizes.Select(static row => new NamedValue(row.Code, ByteSize.Format(row.Bytes)))];

    /// <inheritdoc/>
    public override ValueForm Form => ValueForm.SizeOrCode;

    /// <inheritdoc/>
    public override string Expected => $"one of the sizes {string.Join(", ", sizes.Select(static row => ByteSize.Format(row.Bytes)))}, or `raw` and the code such as `raw 0x05`";

    /// <inheritdoc/>
    public override string Format(ulong value)
    {
        foreach (var (code, bytes) in sizes)
        {
            if (code == value && CodeOf(bytes) == code)
            {
                return ByteSize.Format(bytes);
            }
        }

        // No size of its own: none in the table, or one that another code stands for.
        return RawMark + Raw(value);
    }

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value)
    {
        // `0x2000` is a size here, so a raw code needs its own mark.
        if (IsRaw(text))
        {
            return TryParseRaw(text[RawMark.Length..], out value);
        }

        var found = ByteSize.TryParse(string.Equals(text, "none", StringComparison.OrdinalIgnoreCase) ? "0" : text, out var size) ? CodeOf(size) : null;
        value = found ?? 0;
        return found is not null;
    }

    /// <inheritdoc/>
    public override bool IsRaw(string text) => text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase);

    private ulong? CodeOf(long size)
    {
        foreach (var (code, bytes) in sizes)
        {
            if (bytes == size)
            {
                return code;
            }
        }

        return null;
    }

    private const string RawMark = "raw ";
}
