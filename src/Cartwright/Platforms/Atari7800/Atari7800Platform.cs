using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari7800;

/// <summary>The Atari 7800.</summary>
public sealed class Atari7800Platform : Platform
{
    private const string Rom = "rom";
    private const string NoContainer = "none";

    private static readonly PlatformOption Scheme = new("scheme",
        [.. Atari7800Scheme.All.Select(static (scheme, index) => new NamedValue((ulong)index, scheme.Name, scheme.Meaning))],
        "linear", "How the board shows the ROM at $4000-$FFFF.", "Atari 7800 bankswitching guide; The SuperGame Format");

    private static readonly PlatformOption Container = new("container",
        [new NamedValue(0, "a78", "the A78 container's 128 bytes in front of the ROM"), new NamedValue(1, NoContainer, "the ROM alone")],
        "a78", "What the exchange file begins with; chip files never have it.", "A78 Header Specification");

    /// <inheritdoc/>
    public override PlatformFacts Facts => Atari7800Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => Atari7800Findings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Scheme, Container];

    /// <summary>One a scheme; without the container a layout has nothing of its own.</summary>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [.. Atari7800Scheme.All.Select(static scheme => For(scheme, contained: true))];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) =>
        For(Atari7800Scheme.Named(Word(settings, Scheme)), Word(settings, Container) != NoContainer);

    /// <inheritdoc/>
    public override string Extension(CartView cart) => cart.Headers.Any(static header => header.Table.Region is null) ? "a78" : "bin";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments.Where(static segment => A78Container.Begins(segment.Bytes.Span)))
        {
            log.Add(Atari7800Findings.ContainerInside, segment.Place, $"{segment.Program} begins with a container (ATARI7800 at its byte 1).");
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        if (cart.Rom[Rom] is { } region)
        {
            new Atari7800Checks(cart, region, Atari7800Scheme.Named(cart.Layout.Variant), log).Run();
        }
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        if (A78Container.Begins(file))
        {
            return new RecognitionClaim(Certainty.Exact, "it begins with the A78 container") { PrefixLength = A78Container.Length };
        }

        var length = file.Length;
        if (!Atari7800Scheme.All.Any(scheme => scheme.Sizes.Contains(length)) || !FooterSight.HasMarks(file[^Atari7800Footer.Length..]))
        {
            return null;
        }

        return FooterSight.Agrees(file)
            ? new RecognitionClaim(Certainty.Structural, "the last 128 bytes hold a signature, its marks, and vectors inside the signed area, and the program begins as programs do")
            : new RecognitionClaim(Certainty.Candidate, "the bytes at $FFF8 and $FFF9 have the marks of the footer");
    }

    private static PlatformLayout For(Atari7800Scheme scheme, bool contained)
    {
        ImmutableArray<HeaderTable> headers = contained ? [Atari7800Footer.Table(scheme), A78Container.Table(scheme)] : [Atari7800Footer.Table(scheme)];
        // Banks count from the start; without any, a short program belongs at the end.
        var rom = new RegionRule(Rom, scheme.SizeRule, "program and data") { Align = scheme.FixedPage < 0 ? RegionAlign.End : RegionAlign.Start };
        return new PlatformLayout(scheme.Name, [rom], headers, new Atari7800Addresses(scheme));
    }
}
