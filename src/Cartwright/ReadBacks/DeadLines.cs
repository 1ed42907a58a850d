using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Lines that show no sign of life in a read-back.</summary>
internal static class DeadLines
{
    /// <summary>Address lines whose level changes no word.</summary>
    public static ImmutableArray<int> Address(ReadOnlySpan<ushort> words, int lines)
    {
        var dead = ImmutableArray.CreateBuilder<int>();
        for (var k = 0; k < lines; k++)
        {
            if (IsDead(words, 1 << k))
            {
                dead.Add(k);
            }
        }

        return dead.ToImmutable();
    }

    private static bool IsDead(ReadOnlySpan<ushort> words, int step)
    {
        for (var start = 0; start + (2 * step) <= words.Length; start += 2 * step)
        {
            if (!words.Slice(start, step).SequenceEqual(words.Slice(start + step, step)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The words at which these address lines have these levels.</summary>
    /// <param name="words">All words.</param>
    /// <param name="mask">The lines.</param>
    /// <param name="levels">Their levels.</param>
    public static ushort[] Part(ReadOnlySpan<ushort> words, uint mask, uint levels)
    {
        var part = new ushort[words.Length >> System.Numerics.BitOperations.PopCount(mask)];
        var to = 0;
        for (var a = levels; to < part.Length; a = ((a | mask) + 1 & ~mask) | levels)
        {
            part[to++] = words[(int)a];
        }

        return part;
    }
}
