using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Platforms.GameBoyAdvance;

/// <summary>Game Boy Advance.</summary>
public sealed class AdvancePlatform : Platform
{
    private static readonly SizeRule Sizes = SizeRule.PowersOfTwo(64L << 10, AdvanceAddresses.Window) with
    {
        Step = 4,
        Smallest = AdvanceHeader.Length + 4,
        Words = "a power of two from 64 KiB to 32 MiB; stated, any multiple of 4 from 196 bytes to 32 MiB",
    };

    private static readonly PlatformLayout Only = new("gba",
        [new RegionRule(AdvanceHeader.Region, Sizes, "header, program and data")], [AdvanceHeader.Table], new AdvanceAddresses());

    /// <inheritdoc/>
    public override PlatformFacts Facts => AdvanceFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => AdvanceFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts => [Only];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) => Only;

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "gba";

    /// <inheritdoc/>
    public override ImageOrder OrderOf(ReadOnlySpan<byte> program) => AdvanceRecognition.OrderOf(program);

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => AdvanceRecognition.Recognise(file);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new AdvanceChecks(cart, log).Run();
}
