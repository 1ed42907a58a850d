using Cartwright.Manifests;

namespace Cartwright.Headers;

/// <summary>What is known while a header is written or read: sizes, title, and the fields so far.</summary>
/// <param name="title">The game's title; null when the manifest has none.</param>
/// <param name="revision">The game's revision; null when the manifest has none.</param>
/// <param name="regionLength">Length in bytes of a region; 0 for one that is not there.</param>
public sealed class HeaderContext(ManifestValue? title, ManifestValue? revision, Func<string, long> regionLength)
{
    private readonly Dictionary<string, string> _values = new(StringComparer.OrdinalIgnoreCase);
    private byte[] _held = [];

    /// <summary>A field's value as text: one before the row at hand, or any that the manifest states; null when neither.</summary>
    /// <param name="field">The field's or option's name.</param>
    public string? this[string field] => _values.GetValueOrDefault(field);

    /// <summary>A value of the manifest's <c>cart</c>; null when it is absent.</summary>
    /// <param name="key">Which.</param>
    public ManifestValue? Cart(CartKey key) => key == CartKey.Title ? title : revision;

    /// <summary>Length of a region in bytes; 0 for one that is not there.</summary>
    /// <param name="region">The region's name.</param>
    public long LengthOf(string region) => regionLength(region);

    /// <summary>The bytes of the whole header before any field is written: the program's (zero where no program covers them), or the image's. For headers whose fields depend on what is there.</summary>
    public ReadOnlySpan<byte> Held => _held;

    /// <summary>The bytes of a region; none for one that is not there. For checksums that a container keeps of what follows it.</summary>
    public Func<string, ReadOnlyMemory<byte>> RegionBytes { get; init; } = static _ => default;

    internal void Hold(byte[] header) => _held = header;

    internal void Set(string field, string text) => _values[field] = text;
}
