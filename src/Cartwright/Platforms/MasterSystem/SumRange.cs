using System.Collections.Immutable;
using Cartwright.Headers;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>What a size nibble says: how much of the ROM is summed.</summary>
/// <param name="Nibble">The nibble.</param>
/// <param name="Bytes">The size it names, up to which is summed.</param>
/// <param name="Faulty">Why it must not be used; null for a sound one.</param>
public sealed record SumRange(int Nibble, int Bytes, string? Faulty = null)
{
    /// <summary>Every nibble with a meaning (ROM Header, smspower.org; E, F, 0 and 1 from decoders).</summary>
    public static ImmutableArray<SumRange> All { get; } =
    [
        new(0xA, 8 << 10),
        new(0xB, 16 << 10),
        new(0xC, 32 << 10),
        new(0xD, 48 << 10, "boot ROMs sum the header, and with it the checksum itself"),
        new(0xE, 64 << 10),
        new(0xF, 128 << 10),
        new(0x0, 256 << 10),
        new(0x1, 512 << 10),
        new(0x2, 1 << 20, "boot ROMs are reported to sum it wrongly"),
    ];

    /// <summary>How the ranges are written.</summary>
    public static SizeCode Words { get; } = new([.. All.Select(static row => ((ulong)row.Nibble, (long)row.Bytes))]);

    /// <summary>The row of a nibble; null for one without a meaning.</summary>
    /// <param name="nibble">The nibble.</param>
    public static SumRange? Of(int nibble) => All.FirstOrDefault(row => row.Nibble == nibble);
}
