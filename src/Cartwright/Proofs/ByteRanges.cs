using System.Collections.Immutable;

namespace Cartwright.Proofs;

/// <summary>Finds stretches of bytes.</summary>
internal static class ByteRanges
{
    /// <summary>The stretches in which two images of one length differ.</summary>
    public static ImmutableArray<ByteRange> Differing(ReadOnlySpan<byte> left, ReadOnlySpan<byte> right)
    {
        var ranges = ImmutableArray.CreateBuilder<ByteRange>();
        for (var start = 0; start < left.Length;)
        {
            start += left[start..].CommonPrefixLength(right[start..]);
            var end = start;
            while (end < left.Length && left[end] != right[end])
            {
                end++;
            }

            if (end > start)
            {
                ranges.Add(new ByteRange(start, end - start));
            }

            start = end;
        }

        return ranges.ToImmutable();
    }
}
