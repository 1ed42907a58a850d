using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Checksums;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Snes;

// Whether the programs' bytes stand where this mapping needs them.
internal static class SnesProgramCheck
{
    private const int CopierPrefix = 512;
    private const int InterleavedTitle = 0x7FC0;
    private const int MapMode = 0x15;

    private static ReadOnlySpan<byte> HighModes => [0x1, 0x5, 0xA];

    /// <summary>Looks for what an old copier put in front of a program.</summary>
    public static void FindPrefixes(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments.Where(HasPrefix))
        {
            log.Add(SnesFindings.CopierPrefix, segment.Place,
                $"{segment.Program} has {ByteSize.Describe(segment.Length)}, 512 more than whole kilobytes, and what looks like a header 512 bytes behind a header's place.");
        }
    }

    public static void Run(CartView cart, RegionImage region, SnesMapping mapping, FindingLog log)
    {
        FindElsewhere(cart, region, mapping, log);
        FindInterleaved(cart, region, log);
        FindHidden(cart, region, mapping, log);
        if (!BitOperations.IsPow2(region.Length))
        {
            var count = MirroredByteSum.Repeats(region.Length - 1, region.Length);
            log.Add(SnesFindings.UnevenSize, cart.Place("rom:size"), $"The ROM has {ByteSize.Describe(region.Length)}; the checksum counts its last bytes {count} times.");
        }
    }

    private static bool HasPrefix(PlacedSegment segment)
    {
        if ((segment.Length & 0x3FF) != CopierPrefix)
        {
            return false;
        }

        foreach (var mapping in SnesMapping.All)
        {
            var at = mapping.Title + CopierPrefix;
            if (at + SnesHeaderSight.Length <= segment.Length && SnesHeaderSight.IsHeader(segment.Bytes.Span.Slice(at, SnesHeaderSight.Length), mapping.Modes.AsSpan()))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when the halves are swapped; what the vectors hold means nothing then.</summary>
    public static bool FindSwapped(CartView cart, RegionImage region, SnesMapping mapping, FindingLog log)
    {
        var lower = mapping.Title - mapping.Start;
        var swapped = mapping.Extended
            && SnesHeaderSight.IsHeader(region, lower, mapping.Modes.AsSpan())
            && !SnesHeaderSight.IsHeader(region, mapping.Title, mapping.Modes.AsSpan())
            && (!SnesHeaderSight.IsFree(region, mapping.Title) || SnesVectorCheck.ResetProblem(region, mapping) is not null);
        if (swapped)
        {
            log.Add(SnesFindings.HalvesSwapped, region.CoveringSegment(lower, 1)?.Place ?? cart.Place("programs"),
                $"The programs hold their header at offset 0x{lower:X6}; with {mapping.Name} it belongs at 0x{mapping.Title:X6}.");
        }

        return swapped;
    }

    private static void FindElsewhere(CartView cart, RegionImage region, SnesMapping mapping, FindingLog log)
    {
        if (SnesHeaderSight.IsHeader(region, mapping.Title, mapping.Modes.AsSpan()))
        {
            return;
        }

        foreach (var other in SnesMapping.All)
        {
            // A copy in the first half is a custom of ROMs above 4 MiB, and swapped halves have been told.
            if (other != mapping && other.Title != mapping.Title - mapping.Start && SnesHeaderSight.IsHeader(region, other.Title, other.Modes.AsSpan()))
            {
                log.Add(SnesFindings.HeaderElsewhere, cart.Place("header:mapping"),
                    $"The programs hold what looks like a header at 0x{other.Title:X6}, where {other.Name} has it; the mapping is {mapping.Name}.");
            }
        }
    }

    private static void FindInterleaved(CartView cart, RegionImage region, FindingLog log)
    {
        var header = SnesHeaderSight.Program(region, InterleavedTitle, SnesHeaderSight.Length);
        if (region.Length % 0x10000 == 0 && region.Length >= 0x20000 && SnesHeaderSight.IsHeader(header, HighModes))
        {
            log.Add(SnesFindings.Interleaved, region.CoveringSegment(InterleavedTitle, 1)?.Place ?? cart.Place("programs"),
                $"The programs' header at 0x{InterleavedTitle:X6} has the map mode byte 0x{header[MapMode]:X2}, which belongs to a header elsewhere.");
        }
    }

    private static void FindHidden(CartView cart, RegionImage region, SnesMapping mapping, FindingLog log)
    {
        foreach (var (offset, length) in Hidden(mapping))
        {
            var end = Math.Min(offset + length, region.Length);
            if (region.CoveringSegment(offset, length) is { } segment && region.Bytes.Span[offset..end].ContainsAnyExcept(region.Fill))
            {
                log.Add(SnesFindings.HiddenBytes, segment.Place, $"The console never sees 0x{offset:X6}-0x{end - 1:X6} of the ROM, and {segment.Program} has bytes there.");
            }
        }
    }

    // Banks $7E and $7F; with 64 KiB banks their upper halves show in banks $3E and $3F too.
    private static ImmutableArray<(int Offset, int Length)> Hidden(SnesMapping mapping) =>
        !mapping.Extended ? [] : mapping.High ? [(0x7E0000, 0x8000), (0x7F0000, 0x8000)] : [(0x7F0000, 0x10000)];
}
