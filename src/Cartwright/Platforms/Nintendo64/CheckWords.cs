using System.Buffers.Binary;
using Cartwright.Ordering;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The two check words of the header, which stock boot codes compute again over the first MiB of the program and compare (Disassembly of the N64 boot stages IPL1/2/3).</summary>
public static class CheckWords
{
    /// <summary>First byte they cover.</summary>
    public const int Start = 0x1000;

    /// <summary>The byte behind the last one they cover; an image must be as long.</summary>
    public const int End = 0x101000;

    // The stock boot code of the 6105 mixes in 64 words that lie here in the ROM.
    private const int WindowAt = 0x750;
    private const int WindowMask = 0xFF;

    /// <summary>Computes the words.</summary>
    /// <param name="rom">The ROM in the console's order; one that ends too soon counts as filled up with 0xFF.</param>
    /// <param name="chip">The chip whose stock boot code will compare them.</param>
    /// <returns>The first word in the upper half, the second in the lower.</returns>
    public static ulong Compute(ReadOnlySpan<byte> rom, BootChip chip)
    {
        if (rom.Length < End)
        {
            return Compute(Filled(rom, 0xFF), chip);
        }

        var numbers = new CheckNumbers(chip.Start);
        var words = rom[Start..End];
        for (var i = 0; i < words.Length; i += sizeof(uint))
        {
            var word = BinaryPrimitives.ReadUInt32BigEndian(words[i..]);
            if (chip.Rule == CheckRule.Window)
            {
                numbers.Add(word, BinaryPrimitives.ReadUInt32BigEndian(rom[(WindowAt + (i & WindowMask))..]));
            }
            else
            {
                numbers.Add(word);
            }
        }

        return numbers.Words(chip.Rule);
    }

    /// <summary>What a ROM that ends too soon must go on with for its stored words to be right, in words; null when nothing usual fits.</summary>
    /// <param name="rom">The ROM.</param>
    /// <param name="chip">The chip.</param>
    /// <param name="stored">The words it holds.</param>
    public static string? FittingFill(ReadOnlySpan<byte> rom, BootChip chip, ulong stored)
    {
        var repeated = new byte[End];
        Mirror.Fill(rom, repeated);
        return Compute(Filled(rom, 0xFF), chip) == stored ? "filled up with 0xFF"
            : Compute(Filled(rom, 0x00), chip) == stored ? "filled up with 0x00"
            : Compute(repeated, chip) == stored ? "repeated through the chip"
            : null;
    }

    private static byte[] Filled(ReadOnlySpan<byte> rom, byte fill)
    {
        var filled = new byte[End];
        rom.CopyTo(filled);
        filled.AsSpan(rom.Length).Fill(fill);
        return filled;
    }
}
