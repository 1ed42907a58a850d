using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>RAM on cartridges of the SG-1000 and what it leaves of the ROM (SG-1000/SC-3000 expanded RAM, smspower.org).</summary>
internal static class CartridgeRam
{
    private const string None = "without-ram";
    private const string At2000 = "ram-at-2000";
    private const string At8000 = "ram-at-8000";
    private const int Start = 0x2000;
    private const int End = 0x4000;
    private const int SmallRom = 32 << 10;
    private const int LargeRom = 48 << 10;

    public static PlatformOption Option { get; } = new("cartridgeRam",
        [
            new NamedValue(0, None),
            new NamedValue(1, At8000, "8 KiB at $8000, behind up to 32 KiB of ROM"),
            new NamedValue(2, At2000, "8 KiB at $2000-$3FFF, as on adapter cartridges; the ROM is not seen there"),
        ],
        None, "RAM on the cartridge.", "SG-1000/SC-3000 expanded RAM (smspower.org)");

    public static ImmutableArray<PlatformLayout> Layouts { get; } =
    [
        Make(None, LargeRom, new AddressWindow(0, LargeRom, 0)),
        Make(At8000, SmallRom, new AddressWindow(0, SmallRom, 0)),
        Make(At2000, LargeRom, new AddressWindow(0, Start, 0), new AddressWindow(End, LargeRom, End)),
    ];

    public static void Check(CartView cart, FindingLog log)
    {
        var region = cart.Rom[SegaHeader.Region]!;
        if (cart.Layout.Variant == At2000
            && region.CoveringSegment(Start, End - Start) is { } segment
            && region.Bytes.Span[Start..Math.Min(End, region.Length)].ContainsAnyExcept((byte)0, region.Fill))
        {
            log.Add(SegaFindings.UnderRam, segment.Place, $"{segment.Program} has bytes at 0x2000-0x3FFF, where the cartridge's RAM is seen instead.");
        }
    }

    private static PlatformLayout Make(string variant, int largest, params ImmutableArray<AddressWindow> windows) => new(
        variant,
        [new RegionRule(SegaHeader.Region, Sizes(largest), "program and data")],
        [],
        new WindowedAddresses(SegaHeader.Region, windows, null, [(End - 1, "the cartridge's RAM"), (LargeRom - 1, "behind the ROM"), (0xFFFF, "work RAM, 1 KiB and its repeats")]));

    private static SizeRule Sizes(int largest)
    {
        const int step = 8 << 10;
        return new([.. Enumerable.Range(1, largest / step).Select(static count => (long)count * step)], 0, $"a multiple of 8 KiB up to {ByteSize.Words(largest)}");
    }
}
