using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>The SG-1000 and the SC-3000, whose ROMs have no header.</summary>
public sealed class Sg1000Platform : Platform
{
    private const long Largest = 48 << 10;
    private const string RamAt2000 = "at-2000";
    private const string RamAt8000 = "at-8000";
    private const int RamStart = 0x2000;
    private const int RamLength = 0x2000;

    private static readonly PlatformOption CartridgeRam = new("cartridgeRam",
        [
            new NamedValue(0, "none"),
            new NamedValue(1, RamAt8000, "8 KiB at $8000, behind up to 32 KiB of ROM"),
            new NamedValue(2, RamAt2000, "8 KiB at $2000-$3FFF, as on adapter cartridges; the ROM is not seen there"),
        ],
        "none", "RAM on the cartridge.", "SG-1000/SC-3000 expanded RAM, smspower.org");

    /// <inheritdoc/>
    public override PlatformFacts Facts => Sg1000Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => SegaFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [CartridgeRam];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } =
    [
        Make("none", Largest, new AddressWindow(0, (int)Largest, 0)),
        Make(RamAt8000, 32 << 10, new AddressWindow(0, 32 << 10, 0)),
        Make(RamAt2000, Largest, new AddressWindow(0, RamStart, 0), new AddressWindow(RamStart + RamLength, (int)Largest, RamStart + RamLength)),
    ];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Word(settings, CartridgeRam);
        return Layouts.First(layout => layout.Variant == name);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "sg";

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        StartChecks.Check(cart, hasPauseButton: true, log);
        var region = cart.Rom[SegaHeader.Region]!;
        if (cart.Layout.Variant == RamAt2000
            && region.CoveringSegment(RamStart, RamLength) is { } segment
            && region.Bytes.Span[RamStart..Math.Min(RamStart + RamLength, region.Length)].ContainsAnyExcept((byte)0, region.Fill))
        {
            log.Add(SegaFindings.UnderRam, segment.Place, $"{segment.Program} has bytes at 0x2000-0x3FFF, where the cartridge's RAM is seen instead.");
        }
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        SegaRecognition.HasMark(file) ? null : SegaRecognition.Unmarked(file, (int)Largest);

    private static PlatformLayout Make(string variant, long largest, params ImmutableArray<AddressWindow> windows) => new(
        variant,
        [new RegionRule(SegaHeader.Region, Sizes(largest), "program and data")],
        [],
        new WindowedAddresses(SegaHeader.Region, windows, null, [(0x3FFF, "the cartridge's RAM"), (0xBFFF, "behind the ROM"), (0xFFFF, "work RAM, 1 KiB and its repeats")]));

    private static SizeRule Sizes(long largest)
    {
        const long step = 8 << 10;
        return new([.. Enumerable.Range(1, (int)(largest / step)).Select(static count => count * step)], 0, $"a multiple of 8 KiB up to {ByteSize.Words(largest)}");
    }
}
