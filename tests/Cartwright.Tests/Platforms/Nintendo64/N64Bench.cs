using System.Buffers.Binary;
using System.IO.Hashing;
using Cartwright.Platforms.Nintendo64;

namespace Cartwright.Tests.Platforms.Nintendo64;

/// <summary>Images and boot codes for the tests. No real boot code is among them.</summary>
internal static class N64Bench
{
    /// <summary>Bytes of an image that ends where the sum does.</summary>
    public const int Size = 0x101000;

    /// <summary>The 6102 with the value that the console's check gives for the boot area of <see cref="Pattern"/>.</summary>
    public static BootChip OpenChip { get; } = BootChips.Usual with { BootCheck = 0x812CA412AE47 };

    /// <summary>Chips for which the boot area of <see cref="Pattern"/> is an open boot code: only the values are other than those of the real ones.</summary>
    public static N64Platform OpenPlatform { get; } = new([.. BootChips.All.Select(chip => chip == BootChips.Usual ? OpenChip : chip)]);

    /// <summary>Words of the boot area count up by one odd number, those of the program by another.</summary>
    public static byte[] Pattern()
    {
        var image = new byte[Size];
        for (var i = 0; i < Size; i += 4)
        {
            var word = i < 0x1000 ? (uint)(i / 4) * 0x85EBCA6B : (uint)((i - 0x1000) / 4) * 0x9E3779B1;
            BinaryPrimitives.WriteUInt32BigEndian(image.AsSpan(i), word);
        }

        return image;
    }

    /// <summary>Bytes of a linear congruential generator: x starts at 1; x = (1103515245 x + 12345) mod 2^31 gives bits 16 to 23.</summary>
    public static byte[] Generated()
    {
        var image = new byte[Size];
        var x = 1u;
        for (var i = 0; i < Size; i++)
        {
            x = ((x * 1103515245) + 12345) & 0x7FFFFFFF;
            image[i] = (byte)(x >> 16);
        }

        return image;
    }

    /// <summary>An invented boot code that has the CRC-32 of a chip's stock one.</summary>
    public static byte[] Forged(BootChip chip)
    {
        var code = TestBytes.L(BootCode.Length);
        // A CRC-32 run backwards over its last four bytes gives the bytes that lead to it.
        var wanted = ~chip.StockCode;
        for (var i = 0; i < 4; i++)
        {
            var index = Array.FindIndex(Table, row => row >> 24 == wanted >> 24);
            wanted = ((wanted ^ Table[index]) << 8) | (uint)index;
        }

        var reached = ~Crc32.HashToUInt32(code.AsSpan(0, BootCode.Length - 4));
        BinaryPrimitives.WriteUInt32LittleEndian(code.AsSpan(BootCode.Length - 4), wanted ^ reached);
        return code;
    }

    /// <summary>A cart with a forged boot code and a small program behind it.</summary>
    public static RomBench Bench(BootChip? chip = null, N64Platform? platform = null) => new RomBench(platform ?? new N64Platform())
        .Program("rom", BootCode.Start, Forged(chip ?? BootChips.Usual))
        .Program("rom", CheckWords.Start, TestBytes.L(0x2000))
        .Header("entry", chip?.FixedEntry is null ? "0x80000400" : "0x80000480");

    /// <summary>A cart with the open boot code of <see cref="OpenPlatform"/> and an ELF file on the next border.</summary>
    public static RomBench Open(int elfAt = 0x1D00) => new RomBench(OpenPlatform)
        .Program("rom", BootCode.Start, Pattern()[BootCode.Start..BootCode.End])
        .Program("rom", elfAt, [.. "\u007FELF"u8, .. TestBytes.L(0x101)]);

    private static uint[] Table { get; } = [.. Enumerable.Range(0, 256).Select(index =>
    {
        var row = (uint)index;
        for (var bit = 0; bit < 8; bit++)
            row = (row >> 1) ^ ((row & 1) * 0xEDB88320);

        return row;
    })];
}
