using Cartwright.Headers;
using Cartwright.Manifests;

namespace Cartwright.Platforms.Nes;

/// <summary>A size in bytes that stands for itself: <c>8KiB</c>.</summary>
internal sealed class SizeText : ValueText
{
    /// <summary>The only one.</summary>
    public static SizeText Instance { get; } = new();

    /// <inheritdoc/>
    public override string Expected => ByteSize.Forms;

    /// <inheritdoc/>
    public override string Format(ulong value) => ByteSize.Format((long)value);

    /// <inheritdoc/>
    public override bool TryParse(string text, out ulong value)
    {
        var read = TryRead(text, out var bytes);
        value = (ulong)bytes;
        return read;
    }

    /// <summary>Reads a size, or <c>none</c> for 0.</summary>
    /// <param name="text">The text.</param>
    /// <param name="bytes">The size in bytes.</param>
    public static bool TryRead(string text, out long bytes) =>
        ByteSize.TryParse(string.Equals(text.Trim(), "none", StringComparison.OrdinalIgnoreCase) ? "0" : text, out bytes);
}
