using System.Collections.Immutable;

namespace Cartwright.FaultSimulator;

/// <summary>Banks and halves that the board shows in the place of others.</summary>
internal static class BoardFaults
{
    public static byte[] Apply(byte[] chip, ImmutableArray<Fault> faults) => faults.Aggregate(chip, Apply);

    private static byte[] Apply(byte[] e, Fault fault) => fault.Kind switch
    {
        "wrong-half" => e[(e.Length / 2)..],
        "bus-conflict" => Banks(e, fault.BankSize, bank => bank & fault.Values[bank]),
        "latch-dead" => Banks(e, fault.BankSize, _ => fault.Bank),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "not of the board"),
    };

    private static byte[] Banks(byte[] e, int bankSize, Func<int, int> shown)
    {
        var r = new byte[e.Length];
        for (var bank = 0; bank < e.Length / bankSize; bank++)
            e.AsSpan(shown(bank) * bankSize, bankSize).CopyTo(r.AsSpan(bank * bankSize));

        return r;
    }
}
