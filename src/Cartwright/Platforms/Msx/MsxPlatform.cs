using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Msx;

/// <summary>MSX computers.</summary>
public sealed class MsxPlatform : Platform
{
    private static readonly PlatformOption Mapping = new("mapping",
        [.. MsxMapping.All.Select(static (mapping, index) => new NamedValue((ulong)index, mapping.Name, mapping.Meaning))],
        MsxMapping.All[0].Name, "Where the board shows the ROM: it settles where the header lies, addresses and sizes. No byte of a ROM tells it.",
        "MegaROM Mappers, msx.org; Develop a program in cartridge ROM, msx.org");

    /// <inheritdoc/>
    public override PlatformFacts Facts => MsxFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => MsxFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapping];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } =
    [
        .. MsxMapping.All.Select(static mapping => new PlatformLayout(
            mapping.Name,
            [new RegionRule(MsxHeader.Region, mapping.Sizes, "program and data")],
            [MsxHeader.Table(mapping)],
            mapping.Addresses)),
    ];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Word(settings, Mapping);
        return Layouts.First(layout => layout.Variant == name);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "rom";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments)
        {
            if (MsxRecognition.HasLoadHeader(segment.Bytes.Span))
            {
                log.Add(MsxFindings.LoadHeader, segment.Place, $"{segment.Program} begins with FE and three addresses, and a cartridge's mark lies behind them.");
            }
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log) => new MsxChecks(cart, MsxMapping.Named(cart.Layout.Variant), log).Run();

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => MsxRecognition.Recognise(file);
}
