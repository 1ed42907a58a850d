using System.Collections.Immutable;
using System.Numerics;

namespace Cartwright.Proofs;

/// <summary>Counts wrong bits line by line.</summary>
/// <param name="width">Data lines of the chip.</param>
internal sealed class DifferenceCounter(int width)
{
    private readonly int[] _high = new int[width];
    private readonly int[] _low = new int[width];

    /// <summary>The first word that is wrong in any read so far; -1 where none is.</summary>
    public int First { get; private set; } = -1;

    /// <summary>What it reads.</summary>
    public int FirstRead { get; private set; }

    public ImmutableArray<LineDifference> Lines => [.. Enumerable.Range(0, width).Select(line => new LineDifference(line, _high[line], _low[line]))];

    /// <summary>Adds a read; the wrong bits of each word are added to <paramref name="wrong"/>.</summary>
    public void Add(ReadOnlySpan<ushort> expected, ReadOnlySpan<ushort> read, Span<ushort> wrong)
    {
        for (var a = 0; a < wrong.Length; a++)
        {
            var bits = expected[a] ^ read[a];
            if (bits == 0)
            {
                continue;
            }

            wrong[a] |= (ushort)bits;
            if (First < 0 || a < First)
            {
                (First, FirstRead) = (a, read[a]);
            }

            for (; bits != 0; bits &= bits - 1)
            {
                var line = BitOperations.TrailingZeroCount(bits);
                ((read[a] >> line & 1) != 0 ? _high : _low)[line]++;
            }
        }
    }
}
