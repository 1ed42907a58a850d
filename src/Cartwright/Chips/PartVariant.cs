using System.Collections.Immutable;

namespace Cartwright.Chips;

/// <summary>The variants that one row of the catalogue stands for: their small sectors are at one end or the other, or they have none.</summary>
public static class PartVariant
{
    /// <summary>The end at which the small sectors of a part of that name are; null when the name does not say.</summary>
    /// <param name="part">The row of the catalogue.</param>
    /// <param name="name">The name the user wrote, for example <c>MX29F400T</c>.</param>
    /// <remarks>Sisters of one row are told apart by one letter of their names, T or B.</remarks>
    public static BootEnd? EndOf(Part part, string name)
    {
        var plain = PartName.Plain(name);
        if (!part.Aliases.Any(alias => PartName.Plain(alias) == plain))
        {
            plain = PartName.Plain(PartName.Stem(name));
        }

        foreach (var alias in part.Aliases)
        {
            if (Letters(plain, PartName.Plain(alias)) is var (own, other) && (own, other) is ('T', 'B') or ('B', 'T'))
            {
                return own == 'T' ? BootEnd.Top : BootEnd.Bottom;
            }
        }

        return null;
    }

    /// <summary>The sectors of a variant; empty when they are not known, or depend on an end that is not known.</summary>
    /// <param name="part">The row of the catalogue.</param>
    /// <param name="end">The end of the small sectors; null when not known, or when there are none.</param>
    public static ImmutableArray<SectorGroup> MapOf(Part part, BootEnd? end)
    {
        var map = part.Sectors.Map;
        var isUniform = map.Length == 1;
        return part.Evidence.Status == PartStatus.Described ? map
            : end is null ? HasEnds(part) ? [] : map
            : isUniform && HasOtherKinds(part) ? []
            : end == BootEnd.Top ? [.. map.Reverse()]
            : map;
    }

    /// <summary>True when the row stands for variants with small sectors at either end.</summary>
    /// <param name="part">The row of the catalogue.</param>
    public static bool HasEnds(Part part) => part.Evidence.Status != PartStatus.Described && part.Sectors.Map.Length > 1;

    /// <summary>True when the row stands for variants with equal sectors and for others with small ones at an end: its map is that of the first.</summary>
    /// <param name="part">The row of the catalogue.</param>
    public static bool HasOtherKinds(Part part) =>
        part.Sectors.Layout.Contains("H,L", StringComparison.Ordinal) || part.Sectors.Layout.Contains(" or ", StringComparison.Ordinal);

    private static (char Own, char Other)? Letters(string own, string other)
    {
        if (own.Length != other.Length)
        {
            return null;
        }

        var at = own.AsSpan().CommonPrefixLength(other);
        return at < own.Length && own.AsSpan(at + 1).SequenceEqual(other.AsSpan(at + 1)) ? (own[at], other[at]) : null;
    }
}
