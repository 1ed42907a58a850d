using System.Buffers.Binary;
using System.Numerics;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The check the console itself makes of the boot code before it starts it: its result must be the one the lock chip gives (Disassembly of the N64 boot stages IPL1/2/3).</summary>
public static class BootCheck
{
    /// <summary>Words of the boot code.</summary>
    public const int Words = 1008;

    private const uint Factor = 0x6C078965;

    /// <summary>Computes the check.</summary>
    /// <param name="bootCode">The boot code, 4032 bytes in the console's order.</param>
    /// <param name="seed">The chip's seed.</param>
    /// <returns>48 bits.</returns>
    public static ulong Compute(ReadOnlySpan<byte> bootCode, byte seed)
    {
        Span<uint> state = stackalloc uint[16];
        state.Fill(((seed * Factor) + 1) ^ Word(bootCode, 0));
        for (var i = 1u; i <= Words; i++)
        {
            var previous = Word(bootCode, Math.Max((int)i - 2, 0));
            var current = Word(bootCode, (int)i - 1);
            TakeIn(state, previous, current, i);
            if (i < Words)
            {
                LookAhead(state, (previous, current, Word(bootCode, (int)i)), i);
            }
        }

        return Reduce(state);
    }

    // Numbers 0 to 9 take in the word itself.
    private static void TakeIn(Span<uint> b, uint previous, uint current, uint i)
    {
        var low = (int)(previous & 31);
        var high = (int)(previous >> 27);
        b[0] += Fold(1007 - i, current, i);
        b[1] = Fold(b[1], current, i);
        b[2] ^= current;
        b[3] += Fold(current + 5, Factor, i);
        b[9] = previous < current ? Fold(b[9], current, i) : b[9] + current;
        b[4] += BitOperations.RotateRight(current, low);
        b[7] = Fold(b[7], BitOperations.RotateLeft(current, low), i);
        b[6] = current < b[6] ? (b[3] + b[6]) ^ (current + i) : (b[4] + current) ^ b[6];
        b[5] += BitOperations.RotateLeft(current, high);
        b[8] = Fold(b[8], BitOperations.RotateRight(current, high), i);
    }

    // Numbers 10 to 15 take in the word and the one behind it.
    private static void LookAhead(Span<uint> b, (uint Previous, uint Current, uint Next) word, uint i)
    {
        var (previous, current, next) = word;
        var high = (int)(current >> 27);
        var low = (int)(current & 31);
        b[15] = Fold(Fold(b[15], BitOperations.RotateLeft(current, (int)(previous >> 27)), i), BitOperations.RotateLeft(next, high), i);
        b[14] = Fold(Fold(b[14], BitOperations.RotateRight(current, (int)(previous & 31)), i), BitOperations.RotateRight(next, low), i);
        b[13] += BitOperations.RotateRight(current, low) + BitOperations.RotateRight(next, (int)(next & 31));
        b[10] = Fold(b[10] + current, next, i);
        b[11] = Fold(b[11] ^ current, next, i);
        b[12] += b[8] ^ current;
    }

    private static ulong Reduce(ReadOnlySpan<uint> b)
    {
        var (w, x, y, z) = (b[0], b[0], b[0], b[0]);
        for (var j = 0; j < b.Length; j++)
        {
            var d = b[j];
            w += BitOperations.RotateRight(d, (int)(d & 31));
            x = d < w ? x + d : Fold(x, d, (uint)j);
            y = ((d >> 1) & 1) == (d & 1) ? y + d : Fold(y, d, (uint)j);
            z = (d & 1) == 1 ? z ^ d : Fold(z, d, (uint)j);
        }

        return ((ulong)(Fold(w, x, 16) & 0xFFFF) << 32) | (y ^ z);
    }

    // Upper less lower half of a product.
    private static uint Fold(uint a, uint b, uint instead)
    {
        var product = (ulong)a * (b == 0 ? instead : b);
        var difference = (uint)(product >> 32) - (uint)product;
        return difference == 0 ? (uint)product : difference;
    }

    private static uint Word(ReadOnlySpan<byte> bootCode, int index) => BinaryPrimitives.ReadUInt32BigEndian(bootCode[(index * sizeof(uint))..]);
}
