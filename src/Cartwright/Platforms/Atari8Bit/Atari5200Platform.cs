using System.Buffers.Binary;
using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari8Bit;

/// <summary>The Atari 5200, a console of the 8-bit computers' family.</summary>
public sealed class Atari5200Platform : Platform
{
    private const string Rom = "rom";

    private static readonly PlatformOption Scheme = new("scheme",
        [.. ConsoleScheme.All.Select(static (scheme, index) => new NamedValue((ulong)index, scheme.Name, scheme.Meaning))],
        ConsoleScheme.Plain, "How the board shows the ROM at $4000-$BFFF. Nothing in a ROM of 16 KiB says whether it is for one chip or for two.", "from memory");

    /// <inheritdoc/>
    public override PlatformFacts Facts => Atari5200Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => Atari5200Findings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Scheme, CartContainer.Option];

    /// <summary>One a scheme, with the container; without it a layout has nothing of its own.</summary>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [.. ConsoleScheme.All.Select(static scheme => For(scheme, contained: true))];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) =>
        For(ConsoleScheme.Named(Word(settings, Scheme)), Word(settings, CartContainer.Option) != CartContainer.None);

    /// <inheritdoc/>
    public override string Extension(CartView cart) => cart.Headers.Any(static header => header.Table.Region is null) ? "car" : "a52";

    /// <inheritdoc/>
    public override void CheckPrograms(ImmutableArray<PlacedSegment> segments, FindingLog log)
    {
        foreach (var segment in segments.Where(static segment => CartContainer.Number(segment.Bytes.Span) is not null))
        {
            log.Add(Atari5200Findings.ContainerInside, segment.Place, $"{segment.Program} begins with a container (CART, number {CartContainer.Number(segment.Bytes.Span)}).");
        }
    }

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        if (cart.Rom[Rom] is { } region)
        {
            new Atari5200Checks(cart, region, ConsoleScheme.Named(cart.Layout.Variant), log).Run();
        }
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file)
    {
        var length = file.Length;
        return CartContainer.Claim(file, console: true)
            ?? (ConsoleScheme.All.Any(scheme => scheme.KiB.Contains(length / 1024)) && length % 1024 == 0 && !TrailerSight.Agrees(file) && LooksRight(file[^4..])
                ? new RecognitionClaim(Certainty.Candidate, "its end holds a year or 0xFF, and a start between $4000 and $BFFF")
                : null);
    }

    private static bool LooksRight(ReadOnlySpan<byte> end) =>
        (YearCodec.Skips(end) || YearCodec.IsYear(end[..2])) && BinaryPrimitives.ReadUInt16LittleEndian(end[2..]) is >= 0x4000 and < 0xC000;

    private static PlatformLayout For(ConsoleScheme scheme, bool contained)
    {
        ImmutableArray<HeaderTable> trailer = [ConsoleTrailer.Table];
        var rom = new RegionRule(Rom, scheme.SizeRule, "program and data")
        {
            Align = scheme.Name == ConsoleScheme.Banked ? RegionAlign.Start : RegionAlign.End,
        };
        return new PlatformLayout(
            scheme.Name,
            [rom],
            contained ? trailer.Add(CartContainer.Table(console: true, scheme.TypeOf)) : trailer,
            new ConsoleAddresses(scheme));
    }
}
