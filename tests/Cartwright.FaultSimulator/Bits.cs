namespace Cartwright.FaultSimulator;

/// <summary>Single bits of words.</summary>
internal static class Bits
{
    public static int Of(int word, int bit) => (word >> bit) & 1;

    public static int With(int word, int bit, int value) => (word & ~(1 << bit)) | (value << bit);

    /// <summary>The bits of one byte that chance chooses, each with the same probability.</summary>
    public static int Chosen(Chance chance, long index, double probability) => Chosen(chance, index, probability, 8);

    /// <summary>The bits of one word that chance chooses, each with the same probability.</summary>
    public static int Chosen(Chance chance, long index, double probability, int width)
    {
        if (probability <= 0)
            return 0;

        var chosen = 0;
        for (var bit = 0; bit < width; bit++)
        {
            if (chance.Happens((index * width) + bit, probability))
                chosen |= 1 << bit;
        }

        return chosen;
    }
}
