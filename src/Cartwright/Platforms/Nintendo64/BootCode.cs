using System.Collections.Immutable;
using System.IO.Hashing;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>What a boot code is: for which chip, and whether it is the stock one, which compares the header's check words.</summary>
/// <param name="Chip">The chip it starts with.</param>
/// <param name="IsStock">True for the stock boot code; false for an open one, which reads no header.</param>
public sealed record BootCode(BootChip Chip, bool IsStock)
{
    /// <summary>Its first byte in the ROM.</summary>
    public const int Start = 0x40;

    /// <summary>Its length in bytes.</summary>
    public const int Length = 0xFC0;

    /// <summary>The byte behind it.</summary>
    public const int End = Start + Length;

    /// <summary>Identifies a boot code by its CRC-32, or else by the console's own check of it.</summary>
    /// <param name="bytes">Its 4032 bytes in the console's order.</param>
    /// <param name="chips">The chips it may be for.</param>
    /// <returns>Null when no chip would let it start.</returns>
    public static BootCode? Identify(ReadOnlySpan<byte> bytes, ImmutableArray<BootChip> chips)
    {
        var crc = Crc32.HashToUInt32(bytes);
        foreach (var chip in chips)
        {
            if (chip.StockCode == crc)
            {
                return new BootCode(chip, true);
            }
        }

        var (seed, check) = (-1, 0UL);
        foreach (var chip in chips.OrderBy(static chip => chip.Seed))
        {
            (seed, check) = chip.Seed == seed ? (seed, check) : (chip.Seed, BootCheck.Compute(bytes, chip.Seed));
            if (chip.BootCheck == check)
            {
                return new BootCode(chip, false);
            }
        }

        return null;
    }
}
