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
            if (code == value)
            {
                return ByteSize.Format(bytes);
            }
        }

        return RawMark + Raw(value);
    }

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value)
    {
        // `0x2000` is a size here, so a raw code needs its own mark.
        if (text.StartsWith(RawMark, StringComparison.OrdinalIgnoreCase))
        {
            return TryParseRaw(text[RawMark.Length..], out value);
        }

        value = 0;
        if (!ByteSize.TryParse(string.Equals(text, "none", StringComparison.OrdinalIgnoreCase) ? "0" : text, out var size))
        {
            return false;
        }

        foreach (var (code, bytes) in sizes)
        {
            if (bytes == size)
            {
                value = code;
                return true;
            }
        }

        return false;
    }

    private const string RawMark = "raw ";
}
