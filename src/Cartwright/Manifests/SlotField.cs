using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>A field of a slot's directory record.</summary>
/// <param name="Kind">What it holds.</param>
/// <param name="At">Its first byte in the record.</param>
/// <param name="Width">Its length in bytes.</param>
/// <param name="Place">Where the item stands.</param>
public sealed record SlotField(SlotFieldKind Kind, long At, int Width, SourcePlace Place)
{
    /// <summary>Which of a game's values it holds; null but for <see cref="SlotFieldKind.Value"/>.</summary>
    public string? Name { get; init; }

    /// <summary>The region whose slot it tells of; null for the platform's first.</summary>
    public string? Region { get; init; }

    /// <summary>Whether a number's low byte comes first.</summary>
    public bool LowByteFirst { get; init; }

    /// <summary>Bytes that one count of a start, size or length stands for.</summary>
    public long Unit { get; init; } = 1;

    /// <summary>Value of the bytes behind a title.</summary>
    public byte Pad { get; init; } = (byte)' ';
}
