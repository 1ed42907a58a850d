using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Platforms.VirtualBoy;

/// <summary>Virtual Boy.</summary>
public sealed class VirtualBoyPlatform : Platform
{
    private const int SmallestRom = 1 << 10;

    private static readonly PlatformLayout Only = new("vb",
        [new RegionRule(VirtualBoyHeader.Region, SizeRule.PowersOfTwo(SmallestRom, VirtualBoyAddresses.Window), "program and data, header and handlers at the end")],
        [VirtualBoyHeader.Table], new VirtualBoyAddresses())
    {
        Places =
        [
            new NamedPlace("tail", VirtualBoyHeader.Region, -VirtualBoyHeader.Length, VirtualBoyHeader.Length, "Header and handlers as a linker makes them: the last 544 bytes of the ROM."),
            new NamedPlace("handlers", VirtualBoyHeader.Region, -VirtualBoyHeader.HandlersLength, VirtualBoyHeader.HandlersLength, "The handlers alone: the last 512 bytes of the ROM."),
        ],
    };

    /// <inheritdoc/>
    public override PlatformFacts Facts => VirtualBoyFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => VirtualBoyFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts => [Only];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => Only;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "vb";

    /// <inheritdoc/>
    public override ImageOrder OrderOf(ReadOnlySpan<byte> program) => VirtualBoyRecognition.OrderOf(program);

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => VirtualBoyRecognition.Recognise(file);

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log) => VirtualBoyChecks.CheckPrograms(segments, log);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new VirtualBoyChecks(cart, log).Run();
}
