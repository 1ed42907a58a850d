using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Manifests;

namespace Cartwright.Chips;

/// <summary>Sector maps as people write them, from address 0 upward: <c>16KiB 2x8KiB 32KiB 31x64KiB</c>.</summary>
public static class SectorMapText
{
    /// <summary>Most sectors a map may have: beyond any parallel memory chip.</summary>
    public const int MostSectors = 1 << 20;

    /// <summary>What a map may look like, for messages.</summary>
    public const string Forms = "a sector map from address 0 upward such as 128x4KiB, or 16KiB 2x8KiB 32KiB 31x64KiB";

    /// <summary>Reads a map.</summary>
    /// <param name="text">Groups of <c>COUNTxSIZE</c> or <c>SIZE</c>, with blanks or commas between them.</param>
    /// <param name="map">The map; empty when the text is none.</param>
    /// <returns>False when the text is no map or has more than <see cref="MostSectors"/>.</returns>
    public static bool TryParse(string text, out ImmutableArray<SectorGroup> map)
    {
        map = [];
        var groups = ImmutableArray.CreateBuilder<SectorGroup>();
        var sectors = 0L;
        foreach (var word in text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!TryGroup(word, out var group) || (sectors += group.Count) > MostSectors)
            {
                return false;
            }

            groups.Add(group);
        }

        map = groups.DrainToImmutable();
        return !map.IsEmpty && SectorGroup.TotalOf(map) <= int.MaxValue;
    }

    /// <summary>Writes a map as it is read.</summary>
    /// <param name="map">The map.</param>
    public static string Format(ImmutableArray<SectorGroup> map) => string.Join(' ', map.Select(static group =>
        group.Count == 1 ? ByteSize.Format(group.Bytes) : string.Create(CultureInfo.InvariantCulture, $"{group.Count}x{ByteSize.Format(group.Bytes)}")));

    // The x of 0x1000 is none between count and size.
    private static bool TryGroup(string word, out SectorGroup group)
    {
        var times = word.IndexOf('x', StringComparison.OrdinalIgnoreCase);
        var (count, size) = times > 0 && word[..times] != "0" ? (word[..times], word[(times + 1)..]) : ("1", word);
        var read = int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var many) & ByteSize.TryParse(size, out var bytes);
        group = new SectorGroup(many, (int)Math.Min(bytes, int.MaxValue));
        return read && many > 0 && bytes is > 0 and <= int.MaxValue;
    }
}
