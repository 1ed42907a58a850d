using System.Numerics;

namespace Cartwright.Platforms.Nes;

/// <summary>The NES 2.0 code of a ROM size: twelve bits, of which the highest four at 0xF mean 2^E x (2M + 1) bytes. Source: NESdev Wiki, NES 2.0.</summary>
internal static class RomSize
{
    /// <summary>Most units the plain form holds.</summary>
    public const long LargestPlain = 0xEFF;

    private const int ExponentMark = 0xF00;
    private const int LargestExponent = 60;

    /// <summary>The code of a size; null when no code says it.</summary>
    /// <param name="bytes">The size in bytes.</param>
    /// <param name="unit">Bytes of a unit of the plain form.</param>
    public static int? Code(long bytes, long unit)
    {
        if (bytes % unit == 0 && bytes / unit <= LargestPlain)
        {
            return (int)(bytes / unit);
        }

        var exponent = BitOperations.TrailingZeroCount(bytes);
        var odd = bytes >> exponent;
        return odd is 1 or 3 or 5 or 7 && exponent < LargestExponent ? ExponentMark | (exponent << 2) | (int)(odd >> 1) : null;
    }

    /// <summary>The size a code says; null when it is past any memory.</summary>
    /// <param name="code">The twelve bits.</param>
    /// <param name="unit">Bytes of a unit of the plain form.</param>
    public static long? Bytes(int code, long unit)
    {
        if (code < ExponentMark)
        {
            return code * unit;
        }

        var exponent = (code >> 2) & 0x3F;
        return exponent < LargestExponent ? (1L << exponent) * ((2 * (code & 3)) + 1) : null;
    }

    /// <summary>The smallest size from so many bytes on that a code says.</summary>
    /// <param name="bytes">Bytes needed, 1 or more.</param>
    /// <param name="unit">Bytes of a unit of the plain form.</param>
    public static long Next(long bytes, long unit)
    {
        var units = (bytes + unit - 1) / unit;
        var best = units <= LargestPlain ? units * unit : long.MaxValue;
        for (var odd = 1; odd <= 7; odd += 2)
        {
            // The smallest power of two whose product with the odd number is enough.
            best = Math.Min(best, odd * (long)BitOperations.RoundUpToPowerOf2((ulong)((bytes + odd - 1) / odd)));
        }

        return best;
    }
}
