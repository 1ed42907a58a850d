using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.ColecoVision;

/// <summary>The ColecoVision.</summary>
public sealed class ColecoPlatform : Platform
{
    private const string Plain = "linear";
    private const string Banked = "banked";
    private const int WindowStart = 0x8000;
    private const int WindowEnd = 0x10000;
    private const int BankWindowStart = 0xC000;

    private static readonly PlatformOption Mapper = new("mapper",
        [
            new NamedValue(0, Plain, "up to 32 KiB at $8000-$FFFF"),
            new NamedValue(1, Banked, "banks of 16 KiB: the last one fixed at $8000, another at $C000, chosen by reading $FFC0-$FFFF (from memory)"),
        ],
        Plain, "How the board switches banks: it settles where the header lies, addresses and sizes.", "ColecoVision specifications; banks from memory");

    private static readonly ImmutableArray<(long Last, string What)> Elsewhere = [(0x7FFF, "the console's own: BIOS and RAM"), (0xFFFF, "cartridge")];

    /// <inheritdoc/>
    public override PlatformFacts Facts => ColecoFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => ColecoFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapper];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } =
    [
        new(Plain,
            [new RegionRule(ColecoHeader.Region, new SizeRule([8 << 10, 16 << 10, 24 << 10, 32 << 10], 0, "8, 16, 24 or 32 KiB"), "program and data")],
            [ColecoHeader.Plain],
            new WindowedAddresses(ColecoHeader.Region, [new AddressWindow(WindowStart, WindowEnd, 0)], null, Elsewhere)),
        new(Banked,
            [new RegionRule(ColecoHeader.Region, SizeRule.PowersOfTwo(64 << 10, 1 << 20), "banks of 16 KiB, the one with the header last")],
            [ColecoHeader.Banked],
            new WindowedAddresses(ColecoHeader.Region,
                [new AddressWindow(WindowStart, BankWindowStart, -ColecoHeader.BankSize), new AddressWindow(BankWindowStart, WindowEnd, 0)],
                new BankWindow(BankWindowStart, WindowEnd, ColecoHeader.BankSize, LastBank: 0x3F),
                Elsewhere)),
    ];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Word(settings, Mapper);
        return Layouts.First(layout => layout.Variant == name);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "col";

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new ColecoChecks(cart, cart.Layout.Variant == Banked, log).Run();

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => ColecoRecognition.Recognise(file, Plain, Banked);
}
