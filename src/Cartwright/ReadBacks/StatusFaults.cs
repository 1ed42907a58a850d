using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Explanations by which the chip tells its identity instead of its contents.</summary>
internal static class StatusFaults
{
    // Bits 7 and 6 of a chip that programs or erases: data polling and toggle bit, as data sheets of flash chips have them (common practice).
    private const int DataPolling = 0x80;
    private const int ToggleBit = 6;
    private const int LongestTable = 256;

    // In words: a table that repeats less often than this could be contents.
    private const int FewestRepeats = 4;

    public static IEnumerable<Hypothesis> Propose(ProofCase proof)
    {
        var read = proof.Read;
        if (BusyPhase(proof.Expected.Words, read) is { } phase)
        {
            return [new Hypothesis([Busy], image => BusyWords(image.Words, phase))];
        }

        for (var period = 1; period <= Math.Min(LongestTable, read.Length / FewestRepeats); period++)
        {
            if (read.AsSpan(period).SequenceEqual(read.AsSpan(0, read.Length - period)))
            {
                return period == 1 ? [] : [Table(read[..period])];
            }
        }

        return [];
    }

    /// <summary>The chip is still busy: bit 7 is the cell's complement, bit 6 changes from read to read.</summary>
    public static Fault Busy { get; } = Fault.Of(FaultKinds.LeftInStatusMode, Of("mode", "busy"));

    /// <summary>Whether the read-back is a busy chip's, and whether bit 6 is zero or one in its first word; null when it is not.</summary>
    public static int? BusyPhase(ushort[] expected, ushort[] read)
    {
        var phase = read[0] >> ToggleBit & 1;
        for (var a = 0; a < read.Length; a++)
        {
            if (read[a] != BusyWord(expected[a], a, phase))
            {
                return null;
            }
        }

        return phase;
    }

    private static ushort[] BusyWords(ushort[] image, int phase)
    {
        var words = new ushort[image.Length];
        for (var a = 0; a < words.Length; a++)
        {
            words[a] = BusyWord(image[a], a, phase);
        }

        return words;
    }

    private static ushort BusyWord(int cell, int a, int phase) => (ushort)((~cell & DataPolling) | (((a + phase) & 1) << ToggleBit));

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
