using System.Collections.Immutable;
using Cartwright.Roms;

namespace Cartwright.Slots;

/// <summary>Makes room for a directory where a menu program has reserved it: bytes all of one value, which the assembler put there.</summary>
internal static class DirectoryRoom
{
    /// <summary>The programs without the bytes they reserve for a block; as they are where something else stands there.</summary>
    public static ImmutableArray<PlacedSegment> Clear(ImmutableArray<PlacedSegment> programs, PlacedSegment block) =>
        [.. programs.SelectMany(segment => Clear(segment, block))];

    private static IEnumerable<PlacedSegment> Clear(PlacedSegment segment, PlacedSegment block)
    {
        var start = Math.Max(segment.Offset, block.Offset);
        var end = Math.Min(segment.End, block.End);
        if (segment.Region != block.Region || start >= end || !IsReserved(segment.Bytes.Span[(int)(start - segment.Offset)..(int)(end - segment.Offset)]))
        {
            return [segment];
        }

        var before = segment with { Bytes = segment.Bytes[..(int)(start - segment.Offset)] };
        var behind = segment with { Offset = end, Bytes = segment.Bytes[(int)(end - segment.Offset)..] };
        return new[] { before, behind }.Where(static part => part.Length > 0);
    }

    private static bool IsReserved(ReadOnlySpan<byte> bytes) => bytes[0] is 0x00 or 0xFF && !bytes.ContainsAnyExcept(bytes[0]);
}
