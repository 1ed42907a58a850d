using System.Collections.Immutable;
using Cartwright.Roms;

namespace Cartwright.Platforms.Nintendo64;

/// <summary>The layouts: one for each stock boot code, and those of boot codes that do not read the header.</summary>
internal static class N64Layouts
{
    /// <summary>The variant whose boot code does not read the header.</summary>
    public const string Open = "open";

    /// <summary>The variant whose boot code no chip lets start.</summary>
    public const string None = "none";

    private const int Mebi = 1 << 20;

    // Chip sizes in use: from memory. A chip of 1 MiB would show the header again inside the summed range.
    private static readonly SizeRule Summed = new([2 * Mebi, 4 * Mebi, 8 * Mebi, 12 * Mebi, 16 * Mebi, 32 * Mebi, 40 * Mebi, 64 * Mebi], 2,
        "2, 4, 8, 12, 16, 32, 40 or 64 MiB; stated, any even number of bytes from 0x101000 (the boot code sums 1 MiB from 0x1000 on) to 252 MiB")
    {
        Smallest = CheckWords.End,
        Largest = N64Addresses.Window,
    };

    private static readonly SizeRule Any = new([BootCode.End + Multiple, N64Addresses.Window], Multiple,
        "any multiple of 4 bytes from 4100 bytes to 252 MiB; as small as the programs, unless stated")
    {
        FitStep = Multiple,
    };

    private static readonly ImmutableArray<NamedPlace> Places =
        [new("bootCode", N64Header.Region, BootCode.Start, BootCode.Length, "The boot code, 4032 bytes, which must suit the cartridge's lock chip.")];

    private static readonly N64Addresses Addresses = new();

    private const int Multiple = 4;

    /// <summary>All of them.</summary>
    /// <param name="chips">The chips there are.</param>
    public static ImmutableArray<PlatformLayout> All(ImmutableArray<BootChip> chips) =>
        [.. chips.Select(static chip => Make(chip.Name, chip)), Make(Open, null), Make(None, null)];

    private static PlatformLayout Make(string variant, BootChip? chip) => new(variant,
        [new RegionRule(N64Header.Region, chip is null ? Any : Summed, "header, boot code, program and data")], [N64Header.Table(chip)], Addresses)
    {
        Places = Places,
    };
}
