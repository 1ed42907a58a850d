using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Snes;

/// <summary>The Super Nintendo Entertainment System, in Japan Super Famicom.</summary>
public sealed class SnesPlatform : Platform
{
    private static readonly PlatformOption Mapping = new("mapping",
        [.. SnesMapping.All.Select(static (mapping, index) => new NamedValue((ulong)index, mapping.Name, mapping.Meaning))],
        SnesMapping.Lorom.Name, "How the cartridge wires the ROM's address lines: it settles where the header lies, how addresses map, and which sizes are legal.",
        "SNESdev Wiki, Memory map");

    private static readonly PlatformOption Battery = new(SnesHeader.Battery,
        [new NamedValue(0, "false"), new NamedValue(1, "true")],
        "true", "Whether the save RAM has a battery; counts where `saveRam` is stated and `chipset` is not.", "fullsnes, cartridge chapters");

    /// <inheritdoc/>
    public override PlatformFacts Facts => SnesFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => SnesFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapping, Battery];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [.. SnesMapping.All.Select(For)];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Word(settings, Mapping);
        return Layouts.First(layout => layout.Variant == name);
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => SnesRecognition.Recognise(file);

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "sfc";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log) => SnesProgramCheck.FindPrefixes(segments, log);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        var mapping = SnesMapping.Named(cart.Layout.Variant);
        if (cart.Rom["rom"] is not { } region)
        {
            return;
        }

        if (!SnesProgramCheck.FindSwapped(cart, region, mapping, log))
        {
            SnesVectorCheck.Run(cart, region, mapping, log);
        }

        SnesProgramCheck.Run(cart, region, mapping, log);
        SnesHeaderCheck.Run(cart, region, mapping, log);
    }

    private static PlatformLayout For(SnesMapping mapping) => new(
        mapping.Name,
        [new RegionRule("rom", SnesSizes.For(mapping), "program and data")],
        [SnesHeader.Table(mapping)],
        new SnesAddressMap(mapping))
    {
        Vectors = [SnesVectors.For(mapping)],
    };
}
