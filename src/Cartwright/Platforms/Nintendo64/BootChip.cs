namespace Cartwright.Platforms.Nintendo64;

/// <summary>The lock chip of a cartridge, and what the console does with the boot code it vouches for (Disassembly of the N64 boot stages IPL1/2/3).</summary>
/// <param name="Ntsc">Its name on cartridges for NTSC consoles; null when there is none.</param>
/// <param name="Pal">Its name on cartridges for PAL consoles; null when there is none.</param>
/// <param name="Seed">The byte it hands to the console.</param>
/// <param name="BootCheck">The 48-bit value that the console's check of the boot code must give.</param>
/// <param name="StockCode">CRC-32 of the stock boot code, 0x40-0xFFF.</param>
/// <param name="Rule">How that boot code makes the check words.</param>
public sealed record BootChip(string? Ntsc, string? Pal, byte Seed, ulong BootCheck, uint StockCode, CheckRule Rule)
{
    // The multiplier of the start value (Disassembly of the N64 boot stages IPL1/2/3).
    private const uint UsualFactor = 0x5D588B65;
    private const uint OtherFactor = 0x6C078965;

    /// <summary>Both names: <c>6102-7101</c>.</summary>
    public string Name { get; } = string.Join('-', new[] { Ntsc, Pal }.OfType<string>());

    /// <summary>What the boot code takes off the header's entry address to find the program's.</summary>
    public uint EntryShift { get; init; }

    /// <summary>The address this boot code always starts, whatever the header says; null when the header's counts.</summary>
    public uint? FixedEntry { get; init; }

    /// <summary>The value every running number of the check words starts from.</summary>
    public uint Start => (Seed * (Rule is CheckRule.Sum or CheckRule.Product ? OtherFactor : UsualFactor)) + 1;

    /// <summary>Whether one of its names is this one.</summary>
    /// <param name="name">The name: <c>7101</c>, or both: <c>6102-7101</c>.</param>
    public bool Is(string name) => name == Name || name == Ntsc || name == Pal;
}
