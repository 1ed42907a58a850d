namespace Cartwright.FaultSimulator;

/// <summary>A small generator of numbers, the same from the same seed on every machine: SplitMix64.</summary>
/// <param name="seed">Where it starts.</param>
public sealed class SmallRandom(ulong seed)
{
    private ulong state = seed;

    public ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var x = state;
            x = (x ^ (x >> 30)) * 0xBF58476D1CE4E5B9;
            x = (x ^ (x >> 27)) * 0x94D049BB133111EB;
            return x ^ (x >> 31);
        }
    }

    /// <summary>A number from 0 to below the limit.</summary>
    public int Below(int limit) => (int)(Next() % (ulong)limit);

    /// <summary>A number from the first to the last, both possible.</summary>
    public int Between(int first, int last) => first + Below(last - first + 1);

    public bool Coin() => (Next() & 1) != 0;

    public T Of<T>(params ReadOnlySpan<T> choices) => choices[Below(choices.Length)];

    public byte[] Bytes(int count)
    {
        var bytes = new byte[count];
        for (var i = 0; i < count; i++)
            bytes[i] = (byte)(Next() >> 32);

        return bytes;
    }

    /// <summary>The numbers from 0 to below the count, in a random order.</summary>
    public int[] Shuffled(int count)
    {
        var numbers = Enumerable.Range(0, count).ToArray();
        for (var i = count - 1; i > 0; i--)
        {
            var j = Below(i + 1);
            (numbers[i], numbers[j]) = (numbers[j], numbers[i]);
        }

        return numbers;
    }
}
