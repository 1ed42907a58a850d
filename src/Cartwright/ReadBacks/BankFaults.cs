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

    public static IEnumerable<Hypothesis> Propose(ProofCase proof)
    {
        foreach (var bankSize in ShiftFaults.Halves(proof.ReadBytes.Length).Where(size => size >= SmallestBank && proof.ReadBytes.Length / size <= MostBanks))
        {
            if (Map(proof.Expected.Bytes, proof.ReadBytes, bankSize) is { } order)
            {
                return Name(bankSize, order, proof);
            }
        }

        return [];
    }

    // Which bank of the image each bank of the read-back is; among equal ones first its own, then one that is not taken yet.
    private static int[]? Map(byte[] expected, byte[] read, int bankSize)
    {
        var banks = expected.Length / bankSize;
        var places = Enumerable.Range(0, banks).ToLookup(bank => Digest(expected, bankSize, bank));
        var taken = new bool[banks];
        var order = new int[banks];
        for (var bank = 0; bank < banks; bank++)
        {
            var equal = places[Digest(read, bankSize, bank)].ToArray();
            if (equal.Length == 0)
            {
                return null;
            }

            var own = Array.IndexOf(equal, bank) >= 0 && !taken[bank] ? bank : Array.FindIndex(equal, place => !taken[place]) is >= 0 and var free ? equal[free] : equal[0];
            order[bank] = own;
            taken[own] = true;
        }

        return order;
    }

    private static ulong Digest(byte[] bytes, int bankSize, int bank) => XxHash3.HashToUInt64(bytes.AsSpan(bank * bankSize, bankSize));

    private static IEnumerable<Hypothesis> Name(int bankSize, int[] order, ProofCase proof)
    {
        var size = Of("bankSize", bankSize);
        if (Array.TrueForAll(order, bank => bank == order[0]))
        {
            yield return Banks(Fault.Of(FaultKinds.LatchDead, size, Of("bank", order[0])), bankSize, order);
        }

        if (order.Distinct().Count() == order.Length)
        {
            if (Wiring(order, bankSize / proof.Expected.Shape.Bytes, proof.World) is { } wiring)
            {
                yield return Hypothesis.Of(wiring);
            }

            yield return Banks(Fault.Of(FaultKinds.BanksReordered, size, Of("order", order)), bankSize, order);
        }
        else if (order.Index().All(static row => (row.Item & ~row.Index) == 0))
        {
            yield return Banks(Fault.Of(FaultKinds.BusConflict, size, Of("values", order)), bankSize, order);
        }
    }

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
