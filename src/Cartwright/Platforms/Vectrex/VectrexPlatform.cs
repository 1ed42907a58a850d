using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Vectrex;

/// <summary>The Vectrex.</summary>
public sealed class VectrexPlatform : Platform
{
    private const string Plain = "linear";
    private const string Upper = "halves-from-upper";
    private const string Lower = "halves-from-lower";

    private static readonly PlatformOption Mapper = new("mapper",
        [
            new NamedValue(0, Plain, "up to 32 KiB at $0000-$7FFF"),
            new NamedValue(1, Upper, "64 KiB, the upper half seen at power-on: bit 6 of port B pulled high, as on common boards (from memory)"),
            new NamedValue(2, Lower, "64 KiB, the lower half seen at power-on"),
        ],
        Plain, "Whether the board switches halves: it settles where the header lies, addresses and sizes.", "from memory");

    private static readonly SizeRule PlainSizes = new([4 << 10, 8 << 10, 12 << 10, 16 << 10, VectrexHeader.Window], 0,
        "4, 8, 12, 16 or 32 KiB; 64 KiB with `header.mapper` set to one of the halves");

    private static readonly SizeRule HalvedSizes = SizeRule.PowersOfTwo(2 * VectrexHeader.Window, 2 * VectrexHeader.Window);

    private static readonly ImmutableArray<(long Last, string What)> Elsewhere =
        [(0x7FFF, "the cartridge"), (0xC7FF, "not the cartridge's"), (0xCFFF, "RAM"), (0xDFFF, "the VIA"), (0xFFFF, "the BIOS")];

    /// <inheritdoc/>
    public override PlatformFacts Facts => VectrexFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => VectrexFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapper];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } =
    [
        Make(Plain, PlainSizes, VectrexHeader.AtStart, 0, null),
        Make(Upper, HalvedSizes, VectrexHeader.InUpperHalf, -VectrexHeader.Window, new BankWindow(0, VectrexHeader.Window, VectrexHeader.Window, LastBank: 1)),
        Make(Lower, HalvedSizes, VectrexHeader.AtStart, 0, new BankWindow(0, VectrexHeader.Window, VectrexHeader.Window, LastBank: 1)),
    ];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var word = Word(settings, Mapper);
        return Layouts.First(layout => layout.Variant == word);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "vec";

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new VectrexChecks(cart, log).Run();

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        file.Length != 2 * VectrexHeader.Window ? VectrexRecognition.At(file, 0, Plain)
        : VectrexRecognition.At(file, VectrexHeader.Window, Upper) ?? VectrexRecognition.At(file, 0, Lower);

    private static PlatformLayout Make(string variant, SizeRule sizes, HeaderTable table, long shown, BankWindow? banks) => new(variant,
        [new RegionRule(VectrexHeader.Region, sizes, "header, program and data")],
        [table],
        new WindowedAddresses(VectrexHeader.Region, [new AddressWindow(0, VectrexHeader.Window, shown)], banks, Elsewhere));
}
