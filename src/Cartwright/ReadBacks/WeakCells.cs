using System.Numerics;
using static Cartwright.ReadBacks.FaultParameter;

namespace Cartwright.ReadBacks;

/// <summary>Cells that read as ones here and there: the same ones in every read, or weak ones that come and go.</summary>
internal static class WeakCells
{
    private const int FewestErrors = 12;
    private const int FewestReturns = 6;
    private const double MostDamaged = 0.1;
    private const double LeastShown = 0.08;
    private const int MoreThanChance = 10;

    /// <summary>Whether the read-back has more ones than expected, scattered as no fault of a line scatters them; then the share of zeros that are.</summary>
    public static double? Damaged(WordImage expected, ushort[] read)
    {
        var wrong = ReadSet.Differences(read, expected.Words);
        return Errors(wrong, expected.Words) is >= FewestErrors and var errors && errors / Zeros(expected) is <= MostDamaged and var share
            && Scatter.IsEven(expected.Words, expected.Shape, expected.AddressLines, zerosOnly: true, wrong) ? share : null;
    }

    /// <summary>Cells that were weakly written.</summary>
    public static IEnumerable<Fault> UnderProgrammed(ReadSet set)
    {
        var zeros = Zeros(set.Expected);
        var (together, errors, byChance) = (0.0, 0.0, 0.0);
        var unions = new List<ushort[]>();
        foreach (var programming in set.Programmings.Distinct())
        {
            var wrong = set.Reads.Where((_, i) => set.Programmings[i] == programming).Select(read => ReadSet.Differences(read, set.Expected.Words)).ToList();
            var counts = wrong.ConvertAll(read => Errors(read, set.Expected.Words));
            if (counts.Contains(-1))
            {
                return [];
            }

            for (var i = 0; i < wrong.Count; i++)
            {
                for (var k = i + 1; k < wrong.Count; k++)
                {
                    together += Together(wrong[i], wrong[k]);
                    errors += (counts[i] + counts[k]) / 2.0;
                    byChance += (double)counts[i] * counts[k] / Math.Max(1, zeros);
                }
            }

            unions.Add(Union(wrong));
        }

        var shows = errors == 0 ? 0 : together / errors;
        if (together < FewestReturns || together < MoreThanChance * byChance || shows < LeastShown
            || !Scatter.IsEven(set.Expected.Words, set.Expected.Shape, set.Expected.AddressLines, zerosOnly: true, unions))
        {
            return [];
        }

        var rate = set.Reads.Average(read => Errors(ReadSet.Differences(read, set.Expected.Words), set.Expected.Words)) / zeros;
        return [Fault.Of(FaultKinds.UnderProgrammed, Of("share", Math.Min(1, rate / shows)), Of("shows", shows))];
    }

    private static double Zeros(WordImage image)
    {
        var zeros = 0L;
        foreach (var word in image.Words)
        {
            zeros += image.Shape.Width - BitOperations.PopCount(word);
        }

        return zeros;
    }

    // Zeros that read as ones; -1 where a one reads as zero.
    private static int Errors(ushort[] wrong, ushort[] expected)
    {
        var errors = 0;
        for (var a = 0; a < wrong.Length; a++)
        {
            if ((wrong[a] & expected[a]) != 0)
            {
                return -1;
            }

            errors += BitOperations.PopCount(wrong[a]);
        }

        return errors;
    }

    private static int Together(ushort[] left, ushort[] right)
    {
        var together = 0;
        for (var a = 0; a < left.Length; a++)
        {
            together += BitOperations.PopCount((uint)(left[a] & right[a]));
        }

        return together;
    }

    private static ushort[] Union(List<ushort[]> wrong)
    {
        var union = (ushort[])wrong[0].Clone();
        foreach (var read in wrong.Skip(1))
        {
            for (var a = 0; a < union.Length; a++)
            {
                union[a] |= read[a];
            }
        }

        return union;
    }
}
