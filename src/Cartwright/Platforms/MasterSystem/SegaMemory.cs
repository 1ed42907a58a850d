using System.Collections.Immutable;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Addresses the three consoles have in common (Memory Map, smspower.org).</summary>
internal static class SegaMemory
{
    /// <summary>Where the processor goes for an interrupt in mode 1.</summary>
    public const int Interrupt = 0x38;

    /// <summary>Where it goes when the pause button is pressed.</summary>
    public const int Pause = 0x66;

    public static ImmutableArray<(long Last, string What)> BehindRom { get; } = [(0xFFFF, "work RAM or a register of the mapper")];
}
