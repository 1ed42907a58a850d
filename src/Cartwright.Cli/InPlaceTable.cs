using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>Shows what has to be sent to a board so that a chip behind crossed lines hears the commands of its data sheet.</summary>
internal static class InPlaceTable
{
    private const int MostStretches = 8;

    // Those of JESD68.01's command set 0002 and its byte-wide forerunners; which of them a part takes is in its data sheet.
    private static readonly ImmutableArray<int> Addresses = [0x5555, 0x2AAA, 0x555, 0x2AA, 0xAAA, 0x55];
    private static readonly ImmutableArray<byte> Commands = [0xAA, 0x55, 0x80, 0x90, 0xA0, 0x30, 0x10, 0xF0, 0x98];

    public static ImmutableArray<string[]> Rows(Site site, Part part)
    {
        var writing = new InPlaceWriting(site, (int)part.CapacityBytes);
        var words = (int)part.CapacityBytes / (site.Width / 8);
        return
        [
            .. Addresses.Where(address => address < words).Select(address => new[] { "address", Number.Hex(address, 6), "is", Number.Hex(writing.Address(address), 6), Against(site, writing, address, ~0) }),
            .. site.DataLines is null ? [] : Commands.Select(data => new[] { "data", Number.Hex(data, 2), "is", Number.Hex(writing.Data(data), site.Width / 4) }),
            .. Sectors(site, writing, part, site.Width / 8).Select(static row => new[] { "sector", row.Chip, "is", row.Board, row.Against }),
        ];
    }

    // A chip that looks at fewer lines than the address has may take the command all the same.
    private static string Against(Site site, InPlaceWriting writing, int address, int mask) =>
        writing.Against(address).Where(line => ((mask >> line) & 1) == 1).ToList() is { Count: > 0 } lines ? $"but {string.Join(", ", lines.Select(line => $"A{line} is tied {BoardReader.Word(site.Ties[line])}"))}" : "";

    private static IEnumerable<(string Chip, string Board, string Against)> Sectors(Site site, InPlaceWriting writing, Part part, int bytesAWord)
    {
        foreach (var (at, bytes) in SectorGroup.SectorsOf(part.Sectors.Map).Where(static sector => int.IsPow2(sector.Length)))
        {
            var (start, length) = (at / bytesAWord, bytes / bytesAWord);
            var stretches = writing.Sector(start, length);
            var told = string.Join(", ", stretches.Take(MostStretches).Select(static stretch => $"{Number.Hex(stretch.Start, 6)}-{Number.Hex(stretch.Start + stretch.Length - 1, 6)}"));
            yield return ($"{Number.Hex(start, 6)}-{Number.Hex(start + length - 1, 6)}", stretches.Length > MostStretches ? $"{told} and {stretches.Length - MostStretches} more" : told, Against(site, writing, start, ~(length - 1)));
        }
    }
}
