using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Boards;

/// <summary>Reads the joins of a board.</summary>
internal static class JoinReader
{
    public static ImmutableArray<RegionJoin> Read(ManifestSection section, FindingLog log) =>
        [.. section.Sections.Select(item => ReadJoin(item, log)).OfType<RegionJoin>()];

    private static RegionJoin? ReadJoin(ManifestSection item, FindingLog log)
    {
        var name = item.Text("name", log, required: true);
        ImmutableArray<JoinPart> parts = [.. item["parts"].Sections.Select(part => ReadPart(part, log)).OfType<JoinPart>()];
        if (parts.IsEmpty)
        {
            log.Add(BoardFindings.Contradiction, item.Place, "The join has no parts.", "at least one, in `parts`, with its `region` and `at`");
        }

        return name is null ? null : new RegionJoin(name.Text, parts);
    }

    private static JoinPart? ReadPart(ManifestSection item, FindingLog log)
    {
        var region = item.Text("region", log, required: true);
        var at = item.Size("at", log) ?? 0;
        if (at <= ByteSize.LargestMemory)
        {
            return region is null ? null : new JoinPart(region.Text, item.Size("start", log) ?? 0, item.Size("length", log), at);
        }

        log.Add(BoardFindings.Contradiction, item["at"].Place, $"No chip reaches to {ByteSize.Describe(at)}.", $"`at` up to {ByteSize.Words(ByteSize.LargestMemory)}");
        return null;
    }
}
