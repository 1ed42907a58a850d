using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which the chip tells its identity instead of its contents.</summary>
internal static class StatusFaults
{
    private const int LongestTable = 256;

    // In words: a table that repeats less often than this could be contents.
    private const int FewestRepeats = 4;

    public static IEnumerable<Hypothesis> Propose(ProofCase proof)
    {
        var read = proof.Read;
        for (var period = 1; period <= Math.Min(LongestTable, read.Length / FewestRepeats); period++)
        {
            if (read.AsSpan(period).SequenceEqual(read.AsSpan(0, read.Length - period)))
            {
                return period == 1 ? [] : [Table(read[..period])];
            }
        }

        return [];
    }

    private static Hypothesis Table(ushort[] table) =>
        new([Fault.Of(FaultKinds.LeftInStatusMode, Of("mode", "identify"), Of("table", table.Select(static word => (int)word)))], image =>
        {
            var words = new ushort[image.Count];
            for (var a = 0; a < words.Length; a++)
            {
                words[a] = table[a % table.Length];
            }

            return words;
        });
}
