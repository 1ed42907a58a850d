using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.Images;

/// <summary>What a newer ROM changes on one chip.</summary>
/// <param name="Chip">The chip as it is to be.</param>
/// <param name="Before">Its content as it was, as long as the chip; empty where the chip was of another size.</param>
public sealed record ChipChange(ChipImage Chip, ReadOnlyMemory<byte> Before)
{
    /// <summary>Bytes that differ; all of them where the chip was of another size.</summary>
    public int Changed { get; } = Before.IsEmpty ? Chip.Capacity : Differences.Count(Before.Span, Chip.Bytes.Span);

    /// <summary>The chips that are not what they were.</summary>
    /// <param name="before">The chips of the earlier ROM.</param>
    /// <param name="after">Those of the later one.</param>
    public static ImmutableArray<ChipChange> Between(ImmutableArray<ChipImage> before, ImmutableArray<ChipImage> after) =>
    [
        .. after.Select(chip => new ChipChange(chip, before.FirstOrDefault(old => old.Site.Name == chip.Site.Name && old.Capacity == chip.Capacity)?.Bytes ?? default))
            .Where(static change => change.Changed > 0),
    ];
}
