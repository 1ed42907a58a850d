using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Lynx;

/// <summary>The blocks a cartridge is read in: always 256 of one size, and twice as many of the largest where a second bank is switched.</summary>
public static class LynxBlocks
{
    /// <summary>Blocks of one bank.</summary>
    public const int Count = 0x100;

    /// <summary>Bytes of the largest block: the counter drives eleven address lines.</summary>
    public const int Largest = 0x800;

    /// <summary>The block sizes in bytes.</summary>
    public static ImmutableArray<int> Sizes { get; } = [0x200, 0x400, Largest];

    /// <summary>Bytes of a block of a ROM.</summary>
    /// <param name="length">The ROM's length in bytes.</param>
    public static int SizeFor(long length) => (int)Math.Min(length / Count, Largest);

    /// <summary>The sizes a ROM can have.</summary>
    /// <param name="blockSize">Bytes of a block; null where they follow from the size.</param>
    internal static SizeRule Rule(int? blockSize) => blockSize switch
    {
        null => new SizeRule([.. Sizes.Select(static size => (long)size * Count), 2L * Largest * Count], 0,
            "128, 256 or 512 KiB, 256 blocks of 512, 1024 or 2048 bytes; or 1 MiB, twice 256 blocks of 2048 bytes"),
        Largest => new SizeRule([(long)Largest * Count, 2L * Largest * Count], 0, "512 KiB or 1 MiB, as blocks of 2048 bytes ask for"),
        { } size => new SizeRule([(long)size * Count], 0,
            string.Create(CultureInfo.InvariantCulture, $"exactly {ByteSize.Words((long)size * Count)}, as blocks of {size} bytes ask for")),
    };
}
