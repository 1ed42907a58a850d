using Cartwright.Ordering;

namespace Cartwright.ReadBacks;

/// <summary>Words that tell most about a hypothesis: those that read wrong, and some that read right.</summary>
internal sealed class Samples
{
    private const int MostWrong = 4096;
    private const int MostRight = 4096;
    private const uint ShuffleStream = 9;

    private Samples(uint[] wrong, uint[] right, int wrongCount)
    {
        Wrong = wrong;
        Right = right;
        WrongCount = wrongCount;
    }

    /// <summary>Addresses of words that read wrong, in an order without order.</summary>
    public uint[] Wrong { get; }

    /// <summary>Addresses of words that read right.</summary>
    public uint[] Right { get; }

    /// <summary>Words that read wrong, all of them counted.</summary>
    public int WrongCount { get; }

    public static Samples Take(ReadOnlySpan<ushort> expected, ReadOnlySpan<ushort> read)
    {
        var wrongCount = WordCompare.CountDifferences(expected, read);
        var wrongEvery = Math.Max(1, wrongCount / MostWrong);
        var rightEvery = Math.Max(1, (expected.Length - wrongCount) / MostRight);
        var wrong = new List<uint>(MostWrong + 1);
        var right = new List<uint>(MostRight + 1);
        var (wrongs, rights) = (0, 0);
        for (var a = 0; a < expected.Length; a++)
        {
            if (expected[a] != read[a])
            {
                if (wrongs++ % wrongEvery == 0 && wrong.Count < 2 * MostWrong)
                {
                    wrong.Add((uint)a);
                }
            }
            else if (rights++ % rightEvery == 0 && right.Count < 2 * MostRight)
            {
                right.Add((uint)a);
            }
        }

        return new Samples(Shuffle(wrong), Shuffle(right), wrongCount);
    }

    // The same order in every run; only its lack of pattern counts.
    private static uint[] Shuffle(List<uint> addresses)
    {
        var keys = addresses.Select(static address => Mixing.Of(address, ShuffleStream)).ToArray();
        var values = addresses.ToArray();
        Array.Sort(keys, values);
        return values;
    }
}
