using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.MasterSystem;

/// <summary>Master System, Game Gear or SG-1000: they share processor, connector and most of the memory map.</summary>
public sealed class SegaPlatform : Platform
{
    private static readonly SizeRule Banked = new([8 << 10, 16 << 10, 32 << 10, 48 << 10, 64 << 10, 128 << 10, 256 << 10, 512 << 10, 1 << 20], 16 << 10,
        "8, 16, 32, 48, 64, 128, 256 or 512 KiB or 1 MiB; stated, any number of 16 KiB banks up to 4 MiB")
    {
        Largest = 4 << 20,
    };

    private static readonly SizeRule Plain = new([8 << 10, 16 << 10, 24 << 10, 32 << 10, 40 << 10, 48 << 10], 0, "8, 16, 24, 32, 40 or 48 KiB");

    private readonly PlatformLayout _layout;

    private SegaPlatform(PlatformFacts facts, PlatformLayout layout)
    {
        Facts = facts;
        _layout = layout;
    }

    /// <summary>The Master System.</summary>
    public static SegaPlatform MasterSystem() => Make(SegaFacts.MasterSystem, "sms-export");

    /// <summary>The Game Gear.</summary>
    public static SegaPlatform GameGear() => Make(SegaFacts.GameGear, "gg-international");

    /// <summary>The SG-1000, which has no header.</summary>
    public static SegaPlatform Sg1000() => new(SegaFacts.Sg1000, new PlatformLayout(SegaFacts.Sg1000.Id, [new RegionRule(SegaHeader.Region, Plain, "program and data")], [], new SegaAddresses()));

    /// <inheritdoc/>
    public override PlatformFacts Facts { get; }

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => Facts == SegaFacts.MasterSystem ? SegaFindings.All : [];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts => [_layout];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => _layout;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => Facts == SegaFacts.Sg1000 ? "sg" : Facts.Id;

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) =>
        Facts == SegaFacts.Sg1000 ? SegaRecognition.Unmarked(file) : SegaRecognition.Marked(file, Facts.Id);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new SegaChecks(cart, Facts.Id, log).Run();

    private static SegaPlatform Make(PlatformFacts facts, string region) => new(facts, new PlatformLayout(facts.Id,
        [new RegionRule(SegaHeader.Region, Banked, "program and data")], [SegaHeader.Table(region)], new SegaAddresses()));
}
