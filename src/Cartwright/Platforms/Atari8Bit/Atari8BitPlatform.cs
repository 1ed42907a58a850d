using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The cartridge slots of the Atari 400, 800, XL, XE and XEGS.</summary>
public sealed class Atari8BitPlatform : Platform
{
    private const string Rom = "rom";

    private static readonly PlatformOption Scheme = new("scheme",
        [.. ComputerScheme.All.Select(static (scheme, index) => new NamedValue((ulong)index, scheme.Name, scheme.Meaning))],
        "standard", "How the board shows the ROM at $8000-$BFFF.", "Memory map extract, cartridge B; what is switched is from memory");

    /// <inheritdoc/>
    public override PlatformFacts Facts => Atari8BitFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => Atari8BitFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Scheme, CartContainer.Option];

    /// <summary>One a scheme, with the container; without it a layout has nothing of its own.</summary>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [.. ComputerScheme.All.Select(static scheme => For(scheme, contained: true))];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) =>
        For(ComputerScheme.Named(Word(settings, Scheme)), Word(settings, CartContainer.Option) != CartContainer.None);

    /// <inheritdoc/>
    public override string Extension(CartView cart) => cart.Headers.Any(static header => header.Table.Region is null) ? "car" : "rom";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments.Where(static segment => CartContainer.Number(segment.Bytes.Span) is not null))
        {
            log.Add(Atari8BitFindings.ContainerInside, segment.Place, $"{segment.Program} begins with a container (CART, number {CartContainer.Number(segment.Bytes.Span)}).");
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        if (cart.Rom[Rom] is { } region)
        {
            new Atari8BitChecks(cart, region, ComputerScheme.Named(cart.Layout.Variant), log).Run();
        }
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        var length = file.Length;
        return CartContainer.Claim(file, console: false)
            ?? (ComputerScheme.All.Any(scheme => scheme.KiB.Contains(length / 1024)) && length % 1024 == 0 && TrailerSight.Agrees(file)
                ? new RecognitionClaim(Certainty.Candidate, "the last six bytes say that a cartridge is there, and start inside it")
                : null);
    }

    private static PlatformLayout For(ComputerScheme scheme, bool contained)
    {
        ImmutableArray<HeaderTable> trailer = scheme.HasTrailer ? [ComputerTrailer.Table] : [];
        // Banks count from the start; without any, a short program belongs at the end, where the trailer is.
        var rom = new RegionRule(Rom, scheme.SizeRule, "program and data") { Align = scheme.Bank == 0 ? RegionAlign.End : RegionAlign.Start };
        return new PlatformLayout(
            scheme.Name,
            [rom],
            contained ? trailer.Add(CartContainer.Table(console: false, scheme.TypeOf)) : trailer,
            new ComputerAddresses(scheme));
    }
}
