using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>The Commodore 64.</summary>
public sealed class C64Platform : Platform
{
    /// <summary>The container's signature.</summary>
    public const string Signature = "C64 CARTRIDGE";

    private const int Start = 0x8000;

    private static readonly PlatformOption Mapping = new("mapping",
        [.. C64Mappings.All.Select(static (mapping, index) => new NamedValue((ulong)index, mapping.Name, mapping.Meaning))],
        C64Mappings.All[0].Name, "How the board shows the ROM: it settles where the header lies, addresses and sizes. `type-` and a number is the kind of board as the container counts it.",
        "CRT file format (codebase64.org); cartridge-type tables restating it");

    /// <inheritdoc/>
    public override PlatformFacts Facts => C64Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => CommodoreFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapping];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [.. C64Mappings.All.Select(static mapping => new PlatformLayout(
        mapping.Name,
        [new RegionRule(CommodoreMapping.Region, mapping.Sizes, mapping.Holds) { Align = mapping.Align }],
        [
            CrtHeader.ForC64(mapping),
            .. mapping.Autostart is { } header ? ImmutableArray.Create(StartHeader.ForC64(header)) : [],
            .. mapping.Vectors is { } vectors ? ImmutableArray.Create(StartHeader.Vectors(vectors)) : [],
        ],
        mapping.Addresses))];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Word(settings, Mapping);
        return Layouts.First(layout => layout.Variant == name);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "crt";

    /// <inheritdoc/>
    public override ImmutableArray<ReadOnlyMemory<byte>> Exchange(CartView cart) => CrtWriter.Parts(cart, C64Mappings.Named(cart.Layout.Variant));

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log) =>
        ProgramChecks.Check(segments.AsSpan(), Signature, static bytes => C64Recognition.HasLoadAddress(bytes.Span), log);

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        var mapping = C64Mappings.Named(cart.Layout.Variant);
        var checks = new StartChecks(cart, log);
        if (mapping.Autostart is { } header)
        {
            checks.CheckHeader(Start, header, StartHeader.C64Mark);
        }

        if (mapping.Vectors is not null)
        {
            checks.CheckVectors();
        }

        C64LineChecks.Check(cart, mapping, checks);
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => C64Recognition.Recognise(file);
}
