namespace Cartwright.FaultSimulator;

/// <summary>Chance that can be asked for again: a fraction for every question, always the same for the same question.</summary>
/// <param name="Seed">What tells one run of chance from another.</param>
public readonly record struct Chance(ulong Seed)
{
    /// <summary>A chance of its own for some matter.</summary>
    public Chance About(string matter)
    {
        var seed = Seed;
        foreach (var letter in matter)
            seed = Mix(seed ^ letter);

        return new Chance(seed);
    }

    /// <summary>A chance of its own for a number.</summary>
    public Chance About(long number) => new(Mix(Seed ^ unchecked((ulong)number * 0xD6E8FEB86659FD93)));

    /// <summary>Whether it happens, with this probability, at this place.</summary>
    public bool Happens(long place, double probability) =>
        probability >= 1 || (probability > 0 && (Mix(Seed + unchecked((ulong)place * 0x9E3779B97F4A7C15)) >> 11) * (1.0 / (1UL << 53)) < probability);

    // The output function of SplitMix64: Steele, Lea and Flood, "Fast Splittable Pseudorandom Number Generators", 2014.
    private static ulong Mix(ulong x)
    {
        unchecked
        {
            x += 0x9E3779B97F4A7C15;
            x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
            x = (x ^ (x >> 27)) * 0x94D049BB133111EB;
            return x ^ (x >> 31);
        }
    }
}
