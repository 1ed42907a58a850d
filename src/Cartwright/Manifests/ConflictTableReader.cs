using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Manifests;

/// <summary>Reads the manifest's <c>conflictTables</c>.</summary>
internal static class ConflictTableReader
{
    // A latch of a byte has no more values than this.
    private const int MostValues = 256;

    public static ImmutableArray<ConflictTable> Read(ManifestSection section, FindingLog log) =>
        [.. section.Sections.Select(item => ReadTable(item, log)).OfType<ConflictTable>()];

    private static ConflictTable? ReadTable(ManifestSection item, FindingLog log)
    {
        var (offset, address) = (item.Text("offset", log), item.Text("address", log));
        if ((offset is null) == (address is null))
        {
            log.Add(ManifestFindings.BadValue, item.Place, "One key must say where the table is.", "`offset` or `address`");
            return null;
        }

        var at = new ProgramEntry(new ManifestValue("The conflict table", item.Place), item.Place) { Region = item.Text("region", log), Offset = offset, Address = address };
        return Values(item, log) is { IsEmpty: false } values ? new ConflictTable(at, values) : null;
    }

    private static ImmutableArray<byte> Values(ManifestSection item, FindingLog log)
    {
        var listed = item["values"].Names;
        if (!listed.IsEmpty)
        {
            var values = listed.Select(index => item["values"].Byte(index, log)).ToList();
            return values.Contains(null) ? [] : [.. values.OfType<byte>()];
        }

        var count = item.Number("count", log);
        if (count is not (>= 1 and <= MostValues))
        {
            log.Add(ManifestFindings.BadValue, item.Place, count is null ? "Nothing says how many values the table has." : $"A table of {count} values is not possible.", $"`count` from 1 to {MostValues}, or `values`");
            return [];
        }

        var first = item.Byte("first", log) ?? 0;
        return [.. Enumerable.Range(first, (int)count).Select(static value => (byte)value)];
    }
}
