using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Programs;

namespace Cartwright.Roms;

/// <summary>Holds the bytes of a finished ROM against the values that are written over them. Source: NESdev Wiki, Bus conflict.</summary>
/// <param name="placer">Finds the table's place.</param>
/// <param name="log">Receives what is wrong.</param>
public sealed class ConflictTableCheck(SegmentPlacer placer, FindingLog log)
{
    /// <summary>Checks a table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="rom">The finished ROM.</param>
    public void Check(ConflictTable table, Rom rom)
    {
        var values = new ProgramFile(table.At.ShownName, ProgramFormat.Raw, [new Segment(0, table.Values.AsMemory(), table.At.Place)]);
        foreach (var part in placer.Place(table.At, values))
        {
            if (rom[part.Region] is { } region)
            {
                Check(part, region, table.At.Place);
            }
        }
    }

    private void Check(PlacedSegment part, RegionImage region, SourcePlace place)
    {
        var start = part.Offset < 0 ? part.Offset + region.Length : part.Offset;
        if (start < 0 || start + part.Length > region.Length)
        {
            log.Add(RomFindings.NotInRom, place, $"The conflict table ends at {Number.Hex(start + part.Length, 6)}, and the region `{region.Name}` has {ByteSize.Describe(region.Length)}.");
            return;
        }

        var held = region.Bytes.Span.Slice((int)start, part.Length);
        var same = held.CommonPrefixLength(part.Bytes.Span);
        if (same == part.Length)
        {
            return;
        }

        log.Add(RomFindings.ConflictTable, place, string.Create(CultureInfo.InvariantCulture,
            $"At {Number.Hex(start + same, 6)} of the region `{region.Name}`, where {Number.Hex(part.Bytes.Span[same], 2)} is to be written, the ROM holds {Number.Hex(held[same], 2)}: the latch would see {Number.Hex(part.Bytes.Span[same] & held[same], 2)}."),
            $"{Number.Hex(part.Bytes.Span[same], 2)}");
    }
}
