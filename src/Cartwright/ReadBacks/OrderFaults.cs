using System.Collections.Immutable;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which bytes of the file changed places.</summary>
internal static class OrderFaults
{
    private const int Tried = 256;
    private static readonly ImmutableArray<int> LaneCounts = [2, 4];
    private static readonly ImmutableArray<int> Units = [1, 2];

    public static IEnumerable<Hypothesis> Propose(ProofCase proof, Samples samples)
    {
        var tells = Telling(proof, samples);
        return from row in All(proof.Expected.Bytes.Length)
               where tells.TrueForAll(b => proof.Expected.Bytes[row.Source(b)] == proof.ReadBytes[b])
               select Hypothesis.Moving(row.Fault, row.Source);
    }

    private static List<int> Telling(ProofCase proof, Samples samples)
    {
        var size = proof.Expected.Shape.Bytes;
        return [.. samples.Wrong.Take(Tried).Concat(samples.Right.Take(Tried)).SelectMany(a => Enumerable.Range((int)a * size, size))];
    }

    private static IEnumerable<(Fault Fault, Func<int, int> Source)> All(int length)
    {
        yield return (Fault.Of(FaultKinds.BytesSwapped), static b => b ^ 1);
        if (length % 4 == 0)
        {
            yield return (Fault.Of(FaultKinds.WordsSwapped), static b => b ^ 2);
        }

        foreach (var row in Lanes(length).Concat(Interleaves(length)))
        {
            yield return row;
        }

        if (length % 2 == 0)
        {
            yield return (Fault.Of(FaultKinds.HalvesExchanged), b => b < length / 2 ? b + (length / 2) : b - (length / 2));
        }
    }

    private static IEnumerable<(Fault Fault, Func<int, int> Source)> Lanes(int length) =>
        from count in LaneCounts
        where length % count == 0
        from order in Orders(count)
        where !order.SequenceEqual(Enumerable.Range(0, count))
        select (Fault.Of(FaultKinds.LanesExchanged, Of("order", order)), (Func<int, int>)(b => b - (b % count) + order[b % count]));

    private static IEnumerable<(Fault Fault, Func<int, int> Source)> Interleaves(int length)
    {
        foreach (var (lanes, unit) in from lanes in LaneCounts from unit in Units where length % (lanes * unit) == 0 && length > lanes * unit select (lanes, unit))
        {
            var part = length / unit / lanes;
            yield return (Fault.Of(FaultKinds.InterleaveNotDone, Of("lanes", lanes), Of("unit", unit)), b => (((b / unit % part * lanes) + (b / unit / part)) * unit) + (b % unit));
            yield return (Fault.Of(FaultKinds.InterleaveDoneTwice, Of("lanes", lanes), Of("unit", unit)), b => (((b / unit % lanes * part) + (b / unit / lanes)) * unit) + (b % unit));
        }
    }

    private static IEnumerable<int[]> Orders(int count) => count == 1
        ? [[0]]
        : from shorter in Orders(count - 1)
          from place in Enumerable.Range(0, count)
          select (int[])[.. shorter[..place], count - 1, .. shorter[place..]];
}
