using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Commodore;

/// <summary>The VIC-20.</summary>
public sealed class Vic20Platform : Platform
{
    /// <summary>The container's signature.</summary>
    public const string Signature = "VIC20 CARTRIDGE";

    private static readonly PlatformOption Mapping = new("mapping",
        [.. Vic20Mappings.All.Select(static (mapping, index) => new NamedValue((ulong)index, mapping.Name, mapping.Meaning))],
        Vic20Mappings.All[0].Name, "The blocks of addresses the ROM fills. The order of two blocks in a file is not settled by anybody: give each program its address.",
        "VIC-20 cartridge format (comp.sys.cbm); selects and order from memory");

    /// <inheritdoc/>
    public override PlatformFacts Facts => Vic20Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => CommodoreFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Mapping];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [.. Vic20Mappings.All.Select(static mapping => new PlatformLayout(
        mapping.Name,
        [new RegionRule(CommodoreMapping.Region, mapping.Sizes, mapping.Holds)],
        [CrtHeader.For(Signature), .. mapping.Autostart is { } header ? ImmutableArray.Create(StartHeader.ForVic20(header)) : []],
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
    public override ImmutableArray<ReadOnlyMemory<byte>> Exchange(CartView cart) => CrtWriter.Parts(cart, Vic20Mappings.Named(cart.Layout.Variant));

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        ProgramChecks.Check(segments.AsSpan(), Signature, static bytes => Vic20Recognition.HasMarkedLoadAddress(bytes.Span), log);
        foreach (var segment in segments)
        {
            if (!Vic20Recognition.HasMarkedLoadAddress(segment.Bytes.Span) && Vic20Recognition.LoadAddress(segment.Bytes.Span) is { } address)
            {
                log.Add(CommodoreFindings.MaybeLoadAddress, segment.Place, $"{segment.Program} begins with {Convert.ToHexString(segment.Bytes.Span[..2])}, and its code goes on as if it were loaded to {StartChecks.Hex(address)}.");
            }
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        var checks = new StartChecks(cart, log);
        if (Vic20Mappings.Named(cart.Layout.Variant).Autostart is { } header)
        {
            checks.CheckHeader(Vic20Mappings.StartBlock, header, StartHeader.Vic20Mark);
        }
        else
        {
            checks.Add(CommodoreFindings.ByHand, "mapping", $"The mapping {cart.Layout.Variant} does not fill $A000, the only block the machine looks for cartridges in.");
        }
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => Vic20Recognition.Recognise(file);
}
