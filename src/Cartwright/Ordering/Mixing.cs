namespace Cartwright.Ordering;

/// <summary>A fixed mixing of numbers: the same everywhere, and without a pattern an eye or a wiring fault could mistake.</summary>
public static class Mixing
{
    /// <summary>Mixes a number.</summary>
    /// <param name="x">The number.</param>
    /// <param name="stream">Which of many mixings that have nothing to do with each other.</param>
    /// <remarks>A published finaliser of hash functions in its usual form, with a stream number added: common practice.</remarks>
    public static uint Of(uint x, uint stream)
    {
        x = unchecked((x * 0x9E3779B1) + (stream * 0x7F4A7C15) + 0x165667B1);
        x ^= x >> 16;
        x = unchecked(x * 0x85EBCA6B);
        x ^= x >> 13;
        x = unchecked(x * 0xC2B2AE35);
        return x ^ (x >> 16);
    }
}
