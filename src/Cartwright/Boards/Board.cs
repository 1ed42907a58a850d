using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Boards;

/// <summary>A cartridge circuit board: its chip sites and the bus they meet.</summary>
/// <param name="Id">The id the manifest uses; the manifest's own name for a board described there.</param>
/// <param name="Platform">The platform's id; null for a board that says none.</param>
/// <param name="BusWidth">Data lines of the console's bus: 8, 16 or 32.</param>
/// <param name="ByteOrder">Which byte of a wider bus carries the lowest address: big-endian the highest lines.</param>
/// <param name="BusVolts">Supply of the bus in volts.</param>
/// <param name="Sites">The sites, in the order of the description.</param>
public sealed record Board(string Id, string? Platform, int BusWidth, ByteOrder ByteOrder, double BusVolts, ImmutableArray<Site> Sites)
{
    /// <summary>What kind of board it is, a sentence.</summary>
    public string Description { get; init; } = "";

    /// <summary>Where the description comes from; null when not said.</summary>
    public string? Source { get; init; }

    /// <summary>Regions laid into one for a chip that serves several.</summary>
    public ImmutableArray<RegionJoin> Joins { get; init; } = [];

    /// <summary>Header fields and the values this board is wired for.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<string>> Expects { get; init; } =
        ImmutableSortedDictionary.Create<string, ImmutableArray<string>>(StringComparer.OrdinalIgnoreCase);

    /// <summary>Which byte of a word of the bus, 0 that of the lowest address, a lane carries.</summary>
    /// <param name="lane">A lane of one byte.</param>
    public int ByteOf(Lane lane)
    {
        var fromLowest = lane - Lane.Low;
        return ByteOrder == ByteOrder.BigEndian ? (BusWidth / 8) - 1 - fromLowest : fromLowest;
    }
}
