using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The 512 bytes that old copiers put in front of an image.</summary>
internal static class SegaPrefix
{
    /// <summary>Bytes of the prefix.</summary>
    public const int Length = 0x200;

    private const int BankSize = 0x4000;

    /// <summary>Whether a length is one a file with prefix has.</summary>
    public static bool IsLikely(int length) => length % BankSize == Length;

    public static void Check(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments)
        {
            if (segment.Offset == 0 && IsLikely(segment.Length) && SegaRecognition.FindMark(segment.Bytes.Span[Length..]) is not null)
            {
                log.Add(SegaFindings.CopierPrefix, segment.Place,
                    $"{segment.Program} has {ByteSize.Describe(segment.Length)}, 512 more than whole banks, and its header lies 512 bytes behind a header's place.");
            }
        }
    }
}
