namespace Cartwright.ReadBacks;

/// <summary>How much of a read-back an explanation explains.</summary>
/// <param name="All">Share of all words that read as it says.</param>
/// <param name="Telling">Share of the words where it says something else than the expected image; 1 where there are none.</param>
public readonly record struct Shares(double All, double Telling)
{
    internal static Shares Of(ReadOnlySpan<ushort> expected, ReadOnlySpan<ushort> predicted, ReadOnlySpan<ushort> read)
    {
        var (hits, telling, tellingHits) = (0, 0, 0);
        for (var a = 0; a < read.Length; a++)
        {
            var hit = predicted[a] == read[a] ? 1 : 0;
            var tells = predicted[a] != expected[a] ? 1 : 0;
            hits += hit;
            telling += tells;
            tellingHits += hit & tells;
        }

        return new Shares(read.Length == 0 ? 1 : (double)hits / read.Length, telling == 0 ? 1 : (double)tellingHits / telling);
    }
}
