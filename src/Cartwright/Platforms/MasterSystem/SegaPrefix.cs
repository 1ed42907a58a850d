using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The 512 bytes that old copiers put in front of an image.</summary>
internal static class SegaPrefix
{
    public static void Check(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments)
        {
            if (segment.Offset == 0 && CopierPrefix.Fits(segment.Bytes.Span) && SegaRecognition.HasMark(segment.Bytes.Span[CopierPrefix.Length..]))
            {
                log.Add(SegaFindings.CopierPrefix, segment.Place,
                    $"{segment.Program} has {ByteSize.Describe(segment.Length)}, 512 more than whole kilobytes, and its header lies 512 bytes behind a header's place.");
            }
        }
    }
}
