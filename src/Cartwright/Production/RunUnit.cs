using System.Collections.Immutable;

namespace Cartwright.Production;

/// <summary>One unit of a run.</summary>
/// <param name="Serial">Its serial number.</param>
/// <param name="Texts">Its texts by field name, letter case ignored.</param>
public sealed record RunUnit(long Serial, ImmutableSortedDictionary<string, string> Texts)
{
    /// <summary>A unit that has a number and nothing else.</summary>
    /// <param name="serial">The number.</param>
    public static RunUnit Numbered(long serial) => new(serial, ImmutableSortedDictionary.Create<string, string>(StringComparer.OrdinalIgnoreCase));
}
