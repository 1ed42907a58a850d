using System.Collections.Immutable;
using System.Numerics;
using Cartwright.Ordering;
using Cartwright.ReadBacks;

namespace Cartwright.TestImages;

/// <summary>
/// The test image that shows a completely unknown wiring in one read. Every word is either an address sample, which tells the value of one
/// address line in a code that says which line, or a density sample, random bits whose share of ones is another for every data line.
/// Both survive any re-ordering of addresses, so lines are recognised by counting.
/// </summary>
public static class SignatureImage
{
    private const uint AddressSamplesOfEight = 4;
    private const int DensityStream = 16;
    private const uint StreamsASeed = 32;
    private const double LowestDensity = 0.08;
    private const double DensitySpread = 0.8;

    // Words of even weight: any two of the first sixteen differ in four or eight bits, so that a code survives a lost line.
    private static readonly ImmutableArray<byte> Codes8 =
    [
        0x00, 0x0F, 0x33, 0x3C, 0x55, 0x5A, 0x66, 0x69, 0x96, 0x99, 0xA5, 0xAA, 0xC3, 0xCC, 0xF0, 0xFF,
        0x03, 0x05, 0x06, 0x09, 0x0A, 0x0C, 0x11, 0x12, 0x14, 0x17,
    ];

    /// <summary>Makes the image.</summary>
    /// <param name="bytes">Size of the chip in bytes: a power of two, at most 64 MiB.</param>
    /// <param name="shape">Width of the chip and order of the bytes of a word in the file.</param>
    /// <param name="seed">Another number for each chip of a board, so that exchanged chips are told apart.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is not possible.</exception>
    public static byte[] Make(int bytes, WordShape shape, uint seed = 0)
    {
        if (!BitOperations.IsPow2(bytes) || bytes < 2 * shape.Bytes || bytes > 64 << 20)
        {
            throw new ArgumentOutOfRangeException(nameof(bytes), bytes, "A chip has a power of two of bytes, at most 64 MiB.");
        }

        var words = new ushort[bytes / shape.Bytes];
        var lines = BitOperations.Log2((uint)words.Length);
        var thresholds = Enumerable.Range(0, shape.Width).Select(j => (uint)((LowestDensity + (DensitySpread * j / shape.Width)) * (1L << 32))).ToArray();
        for (var x = 0u; x < words.Length; x++)
        {
            words[x] = Word(x, lines, shape, thresholds, seed * StreamsASeed);
        }

        return WordImage.ToBytes(words, shape);
    }

    private static ushort Word(uint x, int lines, WordShape shape, uint[] thresholds, uint stream)
    {
        if ((Mixing.Of(x, stream + 1) & 7) < AddressSamplesOfEight)
        {
            var line = (int)((Mixing.Of(x, stream + 2) * (ulong)lines) >> 32);
            var code = Code(line, shape.Width);
            return (ushort)((x >> line & 1) == 0 ? code : code ^ shape.Ones);
        }

        var word = 0;
        for (var j = 0; j < thresholds.Length; j++)
        {
            word |= Mixing.Of(x, stream + DensityStream + (uint)j) < thresholds[j] ? 1 << j : 0;
        }

        return (ushort)word;
    }

    /// <summary>The code of an address line: 8 bits from the table, 16 bits from the words whose bit i is an affine function of the bits of i.</summary>
    internal static uint Code(int line, int width)
    {
        if (width == 8)
        {
            return Codes8[line];
        }

        var code = 0u;
        for (var i = 0; i < width; i++)
        {
            code |= (uint)((BitOperations.PopCount((uint)(i & line & 15)) ^ (line >> 4)) & 1) << i;
        }

        return code;
    }
}
