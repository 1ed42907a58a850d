using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Manifests;

namespace Cartwright.Saves;

/// <summary>What changed from one save to another, over the bytes both have.</summary>
/// <param name="FirstLength">Bytes of the first.</param>
/// <param name="SecondLength">Bytes of the second.</param>
/// <param name="BlockSize">Bytes of a block.</param>
/// <param name="ChangedBytes">How many bytes differ.</param>
/// <param name="ChangedBits">How many bits differ.</param>
/// <param name="Blocks">The blocks that differ, by number.</param>
/// <param name="RunCount">How many runs of differing bytes there are.</param>
/// <param name="Runs">The first of them, <see cref="MostRuns"/> at most.</param>
public sealed record SaveComparison(
    int FirstLength, int SecondLength, int BlockSize, int ChangedBytes, long ChangedBits, ImmutableArray<ChangedBlock> Blocks, int RunCount, ImmutableArray<ChangedRun> Runs)
{
    /// <summary>So many runs are told one by one; where there are more, they are not what one looks at.</summary>
    public const int MostRuns = 256;

    /// <summary>Bytes of a block where nobody states another number.</summary>
    public const int UsualBlock = 256;

    /// <summary>Fewest bytes of a block.</summary>
    public const int SmallestBlock = 16;

    /// <summary>True when the saves are the same, byte for byte.</summary>
    public bool IsSame => ChangedBytes == 0 && FirstLength == SecondLength;

    /// <summary>The result in words.</summary>
    public string Summary => ChangedBytes == 0
        ? FirstLength == SecondLength ? $"all {ByteSize.Words(FirstLength)} are the same" : $"the {ByteSize.Words(Math.Min(FirstLength, SecondLength))} both have are the same"
        : FormattableString.Invariant($"{ChangedBytes} of {Math.Min(FirstLength, SecondLength)} bytes ({ChangedBits} bits), first at {Number.Hex(Runs[0].Offset, 6)} ({Runs[0].Offset})");

    /// <summary>Compares two saves.</summary>
    /// <param name="first">The earlier one.</param>
    /// <param name="second">The later one.</param>
    /// <param name="blockSize">Bytes of a block, <see cref="SmallestBlock"/> or more.</param>
    public static SaveComparison Of(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second, int blockSize)
    {
        var common = Math.Min(first.Length, second.Length);
        var runs = ImmutableArray.CreateBuilder<ChangedRun>();
        var (offset, count, bytes, bits) = (0, 0, 0, 0L);
        var blocks = ImmutableArray.CreateBuilder<ChangedBlock>();
        while (true)
        {
            offset += first[offset..common].CommonPrefixLength(second[offset..common]);
            if (offset == common)
            {
                return new(first.Length, second.Length, blockSize, bytes, bits, blocks.ToImmutable(), count, runs.ToImmutable());
            }

            var start = offset;
            for (; offset < common && first[offset] != second[offset]; offset++)
            {
                bits += BitOperations.PopCount((uint)(first[offset] ^ second[offset]));
            }

            bytes += offset - start;
            count++;
            CountBlocks(blocks, start, offset, blockSize);
            if (runs.Count < MostRuns)
            {
                runs.Add(new(start, offset - start));
            }
        }
    }

    private static void CountBlocks(ImmutableArray<ChangedBlock>.Builder blocks, int start, int end, int size)
    {
        while (start < end)
        {
            var next = (int)Math.Min(end, ((start / size) + 1L) * size);
            var earlier = blocks.Count > 0 && blocks[^1].Number == start / size ? blocks[^1].ChangedBytes : 0;
            if (earlier > 0)
            {
                blocks.RemoveAt(blocks.Count - 1);
            }

            blocks.Add(new(start / size, earlier + next - start));
            start = next;
        }
    }
}
