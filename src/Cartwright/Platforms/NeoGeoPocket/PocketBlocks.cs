using System.Collections.Immutable;

namespace Cartwright.Platforms.NeoGeoPocket;

/// <summary>The blocks of the flash chips: 64 KiB each, and the last 64 KiB of a chip as 32, 8, 8 and 16 KiB (flash block table, public driver source). The boot ROM saves into them.</summary>
public static class PocketBlocks
{
    private const int Uniform = 0x10000;

    private static readonly ImmutableArray<int> Tail = [0x8000, 0x2000, 0x2000, 0x4000];

    /// <summary>The blocks of a ROM, chip after chip.</summary>
    /// <param name="romLength">The ROM's length in bytes: a chip's, or twice 2 MiB; any other is taken in whole blocks.</param>
    public static ImmutableArray<FlashBlock> Of(int romLength)
    {
        var blocks = ImmutableArray.CreateBuilder<FlashBlock>();
        var chip = Math.Min(romLength, PocketAddresses.Window);
        for (var at = 0; at < romLength;)
        {
            var isTail = at + Uniform <= romLength && (at + Uniform) % chip == 0;
            foreach (var length in isTail ? Tail : [Math.Min(Uniform, romLength - at)])
            {
                blocks.Add(new FlashBlock(at, length));
                at += length;
            }
        }

        return blocks.ToImmutable();
    }

    /// <summary>The blocks of a ROM that are erased all over.</summary>
    /// <param name="rom">The ROM.</param>
    public static ImmutableArray<FlashBlock> Blank(ReadOnlySpan<byte> rom)
    {
        var blank = ImmutableArray.CreateBuilder<FlashBlock>();
        foreach (var block in Of(rom.Length))
        {
            if (!rom.Slice(block.Offset, block.Length).ContainsAnyExcept(Roms.Blank.Erased))
            {
                blank.Add(block);
            }
        }

        return blank.ToImmutable();
    }
}
