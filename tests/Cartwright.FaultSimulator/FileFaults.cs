using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>Faults of the file that was burnt: byte formulas, R&lt;b&gt; from E.</summary>
internal static class FileFaults
{
    public static byte[] Apply(byte[] file, ImmutableArray<Fault> faults) => faults.Aggregate(file, Apply);

    private static byte[] Apply(byte[] e, Fault fault)
    {
        var size = e.Length;
        var lanes = fault.Lanes;
        var unit = fault.Unit;
        var inLane = size / unit / lanes;
        return fault.Kind switch
        {
            "bytes-swapped" => From(e, b => b ^ 1),
            "words-swapped" => From(e, b => b ^ 2),
            "halves-exchanged" => From(e, b => b ^ (size / 2)),
            "lanes-exchanged" => From(e, b => (b / fault.Order.Length * fault.Order.Length) + fault.Order[b % fault.Order.Length]),
            "banks-reordered" => From(e, b => (fault.Order[b / fault.BankSize] * fault.BankSize) + (b % fault.BankSize)),
            "rotated" => From(e, b => (int)(((long)b + fault.By + size) % size)),
            "repeated" => From(e, b => b % fault.Period),
            // R[s B/L + q] = E[Lq + s]
            "interleave-not-done" => From(e, b => InUnits(b, unit, u => (lanes * (u % inLane)) + (u / inLane))),
            // R[Lq + s] = E[s B/L + q]
            "interleave-done-twice" => From(e, b => InUnits(b, unit, u => (u % lanes * inLane) + (u / lanes))),
            "prefix-left-in" => WithPrefix(e, fault),
            "chips-exchanged" or "other-image" => CutOrFilled([.. fault.Image], size),
            "file-damaged-as-text" => CutOrFilled(TextDamage.Apply(e, fault.How), size),
            _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "not of the file"),
        };
    }

    private static byte[] From(byte[] e, Func<int, int> source)
    {
        var r = new byte[e.Length];
        for (var b = 0; b < r.Length; b++)
            r[b] = e[source(b)];

        return r;
    }

    private static int InUnits(int b, int unit, Func<int, int> source) => (source(b / unit) * unit) + (b % unit);

    private static byte[] WithPrefix(byte[] e, Fault fault)
    {
        var r = new byte[e.Length];
        fault.Prefix.CopyTo(r);
        e.AsSpan(0, e.Length - fault.Length).CopyTo(r.AsSpan(fault.Length));
        return r;
    }

    private static byte[] CutOrFilled(byte[] file, int size)
    {
        var r = new byte[size];
        Array.Fill(r, (byte)0xFF);
        file.AsSpan(0, Math.Min(size, file.Length)).CopyTo(r);
        return r;
    }
}
