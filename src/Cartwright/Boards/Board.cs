using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Boards;

/// <summary>A cartridge circuit board: its chip sites and the bus they meet.</summary>
/// <param name="Id">The id the manifest uses; the manifest's own name for a board described there.</param>
/// <param name="Platform">The platform's id; null for a board that says none.</param>
/// <param name="BusWidth">Data lines of the console's bus: 8 or 16.</param>
/// <param name="ByteOrder">Which byte of a 16-bit bus carries the even address: big-endian on D8-D15.</param>
/// <param name="BusVolts">Supply of the bus in volts.</param>
/// <param name="Sites">The sites, in the order of the description.</param>
public sealed record Board(string Id, string? Platform, int BusWidth, ByteOrder ByteOrder, double BusVolts, ImmutableArray<Site> Sites)
{
    /// <summary>What kind of board it is, a sentence.</summary>
    public string Description { get; init; } = "";

    /// <summary>Where the description comes from; null when not said.</summary>
    public string? Source { get; init; }

    /// <summary>Header fields and the values this board is wired for.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<string>> Expects { get; init; } =
        ImmutableSortedDictionary.Create<string, ImmutableArray<string>>(StringComparer.OrdinalIgnoreCase);

    /// <summary>Which of two bytes, 0 the even, a lane of this bus carries.</summary>
    /// <param name="lane">The low or the high lane.</param>
    public int ByteOf(Lane lane) => (lane == Lane.High) == (ByteOrder == ByteOrder.BigEndian) ? 0 : 1;
}
