using System.Numerics;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>A bus that shows chance, and a chip that tells its state, in every read another.</summary>
internal static class IdleBus
{
    private const double Widest = 5.5;

    /// <summary>Nothing of the image is in any read, and nothing of one read in another.</summary>
    public static IEnumerable<Fault> ByChance(ReadSet set)
    {
        for (var i = 0; i < set.Reads.Length; i++)
        {
            for (var k = i; k < set.Reads.Length; k++)
            {
                if (!IsUnrelated(set.Reads[i], k == i ? set.Expected.Words : set.Reads[k], set.Expected.Shape.Width)
                    || (k == i && !IsUnrelated(set.Reads[i], [], set.Expected.Shape.Width)))
                {
                    return [];
                }
            }
        }

        return set.Reads.Length > 1 ? [Fault.Of(FaultKinds.BusNotDriven, Of("shows", "chance"))] : [];
    }

    // Every line differs in half of all words.
    private static bool IsUnrelated(ushort[] read, ushort[] other, int width)
    {
        var differences = new long[width];
        for (var a = 0; a < read.Length; a++)
        {
            for (var bits = (uint)(read[a] ^ (other.Length == 0 ? 0 : other[a])); bits != 0; bits &= bits - 1)
            {
                differences[BitOperations.TrailingZeroCount(bits)]++;
            }
        }

        return Array.TrueForAll(differences, count => Math.Abs(count - (read.Length / 2.0)) <= Widest * Math.Sqrt(read.Length) / 2);
    }

    /// <summary>The chip is busy in every read.</summary>
    public static IEnumerable<Fault> Busy(ReadSet set) =>
        set.Reads.All(read => StatusFaults.BusyPhase(set.Expected.Words, read) is not null) ? [StatusFaults.Busy] : [];
}
