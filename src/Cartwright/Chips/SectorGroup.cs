using System.Collections.Immutable;

namespace Cartwright.Chips;

/// <summary>Neighbouring sectors of one size.</summary>
/// <param name="Count">How many, at least 1.</param>
/// <param name="Bytes">Size of each, in bytes.</param>
public readonly record struct SectorGroup(int Count, int Bytes)
{
    /// <summary>Bytes that a map covers.</summary>
    /// <param name="map">The map.</param>
    public static long TotalOf(ImmutableArray<SectorGroup> map) => map.Sum(static group => (long)group.Count * group.Bytes);

    /// <summary>Every sector of a map, from address 0 upward.</summary>
    /// <param name="map">The map.</param>
    /// <returns>First byte and length of each.</returns>
    public static IEnumerable<(int Start, int Length)> SectorsOf(ImmutableArray<SectorGroup> map)
    {
        var start = 0;
        foreach (var group in map)
        {
            for (var i = 0; i < group.Count; i++, start += group.Bytes)
            {
                yield return (start, group.Bytes);
            }
        }
    }
}
