using System.Collections.Immutable;

namespace Cartwright.Platforms.Nes;

/// <summary>The submappers that matter to somebody who builds a cart. Source: NESdev Wiki, NES 2.0 submappers.</summary>
public static class NesSubmappers
{
    /// <summary>All rows, in order of mapper and number.</summary>
    public static ImmutableArray<NesSubmapper> All { get; } =
    [
        new(1, 0, "normal"),
        new(1, 5, "32 KiB of PRG without banks"),
        new(1, 6, "network-system board"),
        new(1, 7, "clone with hard-wired mirroring"),
        .. Conflicts(2),
        .. Conflicts(3),
        new(4, 0, "Sharp MMC3"),
        new(4, 1, "MMC6, 1 KiB of RAM inside"),
        new(4, 2, "hard-wired mirroring"),
        new(4, 3, "MC-ACC"),
        new(4, 4, "NEC MMC3"),
        new(4, 5, "T9552 scrambler"),
        .. Conflicts(7),
        .. Vrc(21),
        .. Vrc(23),
        .. Vrc(25),
        new(30, 0, "the battery flag tells self-flashing wiring from fixed"),
        new(32, 0, "normal"),
        new(32, 1, "fixed one-screen, PRG 8+8+16F"),
        new(34, 0, "CHR above 8 KiB tells NINA-001, CHR RAM tells BNROM"),
        new(34, 1, "NINA-001"),
        new(34, 2, "BNROM"),
        new(68, 0, "normal"),
        new(68, 1, "dual-cartridge board"),
        new(71, 0, "hard-wired mirroring"),
        new(71, 1, "one-screen by the mapper"),
        new(78, 0, "unspecified"),
        new(78, 1, "one-screen"),
        new(78, 3, "horizontal or vertical by the mapper"),
        new(85, 0, "unspecified"),
        new(85, 1, "VRC7b (A3)"),
        new(85, 2, "VRC7a (A4)"),
        new(185, 0, "unspecified"),
        new(185, 4, "CHR on when the latch's low bits are 0"),
        new(185, 5, "CHR on when the latch's low bits are 1"),
        new(185, 6, "CHR on when the latch's low bits are 2"),
        new(185, 7, "CHR on when the latch's low bits are 3"),
        new(206, 0, "normal"),
        new(206, 1, "32 KiB of PRG without banks"),
        new(210, 0, "unspecified"),
        new(210, 1, "N175"),
        new(210, 2, "N340"),
        new(232, 0, "normal"),
        new(232, 1, "outer bank bits swapped"),
    ];

    /// <summary>The rows of a mapper; empty when nothing is known of its submappers.</summary>
    /// <param name="mapper">The mapper number.</param>
    public static ImmutableArray<NesSubmapper> Of(int mapper) => [.. All.Where(row => row.Mapper == mapper)];

    private static ImmutableArray<NesSubmapper> Conflicts(int mapper) =>
        [new(mapper, 0, "unspecified"), new(mapper, 1, "no bus conflicts"), new(mapper, 2, "bus conflicts: value AND ROM byte")];

    private static ImmutableArray<NesSubmapper> Vrc(int mapper) =>
        [new(mapper, 0, "both address layouts"), new(mapper, 1, "VRC4, low lines"), new(mapper, 2, "VRC4, high lines"), new(mapper, 3, "VRC2")];
}
