using System.Collections.Immutable;
using System.IO.Hashing;
using System.Numerics;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which whole banks stand elsewhere.</summary>
internal static class BankFaults
{
    private const int SmallestBank = 256;
    private const int MostBanks = 4096;

    // Of more banks than these no latch is told that the image cannot tell from lines.
    private const int MostBanksOfLatch = 8;

    /// <summary>Proposes.</summary>
    /// <param name="proof">The image and the read-back.</param>
    /// <param name="wirings">Wirings that explain the read-back already: where equal banks leave a choice it is theirs.</param>
    public static IEnumerable<Hypothesis> Propose(ProofCase proof, IReadOnlyCollection<LineModel> wirings)
    {
        foreach (var bankSize in ShiftFaults.Halves(proof.ReadBytes.Length).Where(size => size >= SmallestBank && proof.ReadBytes.Length / size <= MostBanks))
        {
            if (Places(proof.Expected.Bytes, proof.ReadBytes, bankSize) is { } places)
            {
                return Name(bankSize, places, proof, wirings);
            }
        }

        return [];
    }

    // Which banks of the image each bank of the read-back can be.
    private static int[][]? Places(byte[] expected, byte[] read, int bankSize)
    {
        var banks = expected.Length / bankSize;
        var byDigest = Enumerable.Range(0, banks).GroupBy(bank => Digest(expected, bankSize, bank)).ToDictionary(static row => row.Key, static row => row.ToArray());
        var places = new int[banks][];
        for (var bank = 0; bank < banks; bank++)
        {
            if (!byDigest.TryGetValue(Digest(read, bankSize, bank), out var equal))
            {
                return null;
            }

            places[bank] = equal;
        }

        return places;
    }

    private static ulong Digest(byte[] bytes, int bankSize, int bank) => XxHash3.HashToUInt64(bytes.AsSpan(bank * bankSize, bankSize));

    private static IEnumerable<Hypothesis> Name(int bankSize, int[][] places, ProofCase proof, IReadOnlyCollection<LineModel> wirings)
    {
        var size = Of("bankSize", bankSize);
        var everywhere = places.Skip(1).Aggregate((IEnumerable<int>)places[0], static (left, right) => left.Intersect(right)).ToArray();
        if (everywhere.Length > 0)
        {
            yield return Banks(Fault.Of(FaultKinds.LatchDead, size, Of("bank", everywhere[0])), bankSize, [.. Enumerable.Repeat(everywhere[0], places.Length)]);
        }

        var known = wirings.Select(wiring => Order(wiring, places.Length, bankSize / proof.Expected.Shape.Bytes)).OfType<int[]>().ToArray();
        foreach (var order in known.Append(OneToOne(places)).OfType<int[]>().Where(IsOneToOne).DistinctBy(Text))
        {
            if (Wiring(order, bankSize / proof.Expected.Shape.Bytes, proof.World) is { } wiring)
            {
                yield return Hypothesis.Of(wiring);
            }

            yield return Banks(Fault.Of(FaultKinds.BanksReordered, size, Of("order", order)), bankSize, order);
        }

        int[]?[] masked = known.Length == 0 || places.Length <= MostBanksOfLatch ? [Masked(places)] : [];
        foreach (var order in known.Concat(masked).OfType<int[]>().Where(IsMasked).DistinctBy(Text))
        {
            yield return Banks(Fault.Of(FaultKinds.BusConflict, size, Of("values", order)), bankSize, order);
        }
    }

    private static string Text(int[] order) => string.Join(',', order);

    // Where a wiring shows each bank; null where it changes more than that.
    private static int[]? Order(LineModel wiring, int banks, int bankWords)
    {
        var order = Enumerable.Range(0, banks).Select(bank => wiring.ChipAddress((uint)(bank * bankWords))).ToArray();
        return wiring.Data.IsEmpty && wiring.Address.All(op => IsOfBanks(op, bankWords))
            && Array.TrueForAll(order, chip => chip % bankWords == 0 && chip / bankWords < banks)
            ? [.. order.Select(chip => (int)(chip / bankWords))]
            : null;
    }

    private static bool IsOfBanks(LineOp op, int bankWords) => op.Kind != LineOpKind.Permuted && (op.Mask & (uint)(bankWords - 1)) == 0;

    private static bool IsOneToOne(int[] order) => order.Distinct().Count() == order.Length;

    // Each bank once: of equal banks first each its own, then what is left.
    private static int[]? OneToOne(int[][] places)
    {
        var taken = new bool[places.Length];
        var order = new int[places.Length];
        for (var bank = 0; bank < order.Length; bank++)
        {
            order[bank] = Array.IndexOf(places[bank], bank) >= 0 ? bank : -1;
            taken[bank] = order[bank] >= 0;
        }

        for (var bank = 0; bank < order.Length; bank++)
        {
            if (order[bank] < 0)
            {
                var free = Array.FindIndex(places[bank], place => !taken[place]);
                if (free < 0)
                {
                    return null;
                }

                order[bank] = places[bank][free];
                taken[order[bank]] = true;
            }
        }

        return order;
    }

    // Each bank its own number, or one that lacks some of its bits.
    private static int[]? Masked(int[][] places)
    {
        var order = places.Select((equal, bank) => LastWithin(equal, bank)).ToArray();
        return Array.TrueForAll(order, static bank => bank >= 0) ? order : null;
    }

    private static int LastWithin(int[] places, int bank) => Array.FindLastIndex(places, place => (place & ~bank) == 0) is >= 0 and var last ? places[last] : -1;

    private static bool IsMasked(int[] order) => !IsOneToOne(order) && order.Index().All(static row => (row.Item & ~row.Index) == 0);

    private static Hypothesis Banks(Fault fault, int bankSize, int[] order) => Hypothesis.Making(fault, image =>
    {
        var read = new byte[image.Bytes.Length];
        for (var bank = 0; bank < order.Length; bank++)
        {
            image.Bytes.AsSpan(order[bank] * bankSize, bankSize).CopyTo(read.AsSpan(bank * bankSize));
        }

        return read;
    });

    // Banks that moved as exchanged and inverted lines move them.
    private static LineModel? Wiring(int[] order, int bankWords, WritingWorld world)
    {
        if (!BitOperations.IsPow2(order.Length) || world != WritingWorld.WrittenElsewhere)
        {
            return null;
        }

        var low = BitOperations.Log2((uint)bankWords);
        var moved = Enumerable.Range(0, BitOperations.Log2((uint)order.Length)).Select(k => order[1 << k] ^ order[0]).ToArray();
        if (!Array.TrueForAll(moved, BitOperations.IsPow2) || moved.Distinct().Count() != moved.Length)
        {
            return null;
        }

        var map = Enumerable.Range(0, low).Concat(moved.Select(bit => low + BitOperations.Log2((uint)bit))).ToImmutableArray();
        var inverted = (uint)order[0] << low;
        var ops = ImmutableArray.CreateBuilder<LineOp>();
        if (!map.SequenceEqual(Enumerable.Range(0, map.Length)))
        {
            ops.Add(LineOp.Of(new LineMap(map)));
        }

        if (inverted != 0)
        {
            ops.Add(LineOp.Lines(LineOpKind.Inverted, inverted));
        }

        return ops.Count == 0 ? null : new LineModel(ops.ToImmutable(), [], world);
    }
}
