using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Roms;

namespace Cartwright.Platforms;

/// <summary>A finished ROM with its headers, as a platform's own checks see it.</summary>
/// <param name="Layout">The layout it was made by.</param>
/// <param name="Rom">The regions.</param>
/// <param name="Headers">The headers as written.</param>
/// <param name="Place">The place of a manifest key: <c>header:mapper</c>.</param>
public sealed record CartView(PlatformLayout Layout, Rom Rom, ImmutableArray<HeaderImage> Headers, Func<string, SourcePlace> Place)
{
    /// <summary>The text of a header field; null when no header has it.</summary>
    /// <param name="field">The field's name.</param>
    public string? this[string field]
    {
        get
        {
            foreach (var header in Headers)
            {
                if (header[field] is { } text)
                {
                    return text;
                }
            }

            return null;
        }
    }

    /// <summary>The bytes of a region; empty when the cart has none of it.</summary>
    /// <param name="region">The region's name.</param>
    public ReadOnlySpan<byte> Bytes(string region) => Rom[region] is { } image ? image.Bytes.Span : [];
}
