using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.Atari2600;

/// <summary>The Atari 2600, also called VCS. Its cartridges hold no header and no checksum: the bank scheme is all there is to know.</summary>
public sealed class Atari2600Platform : Platform
{
    internal const string Rom = "rom";

    private static readonly PlatformOption Scheme = new("scheme",
        [.. BankSchemes.All.Select(static (scheme, index) => new NamedValue((ulong)index, scheme.Name, scheme.Meaning))],
        "4k", "How the board shows the ROM through the console's window of 4 KiB; nothing in the ROM says it.",
        "Bank-Switching; 2600 F8 bank switching; what no row's source names is from memory")
    { Required = true };

    /// <inheritdoc/>
    public override PlatformFacts Facts => Atari2600Facts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => Atari2600Findings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformOption> Options { get; } = [Scheme];

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [.. BankSchemes.All.Select(For)];

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings)
    {
        var name = Word(settings, Scheme);
        return Layouts.First(layout => layout.Variant == name);
    }

    /// <inheritdoc/>
    public override string Extension(CartView cart) => "a26";

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        var scheme = BankSchemes.Named(cart.Layout.Variant);
        if (cart.Rom[Rom] is { } region)
        {
            VectorChecks.Run(cart, region, scheme, log);
            ProgramChecks.Run(cart, region, scheme, log);
        }
    }

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => ImageSight.Of(file);

    private static PlatformLayout For(BankScheme scheme)
    {
        // Where there are no banks to count from the start, a short program belongs at the end, under the vectors.
        var rom = new RegionRule(Rom, scheme.SizeRule, "program and data")
        {
            Align = scheme.PowerOn == PowerOn.Only ? RegionAlign.End : RegionAlign.Start,
        };
        return new PlatformLayout(scheme.Name, [rom, .. Data(scheme)], [], new Atari2600Addresses(scheme)) { Vectors = [Atari2600Vectors.Table] };
    }

    private static IEnumerable<RegionRule> Data(BankScheme scheme) =>
        scheme.Data == 0 ? [] : [new RegionRule("data", SizeRule.PowersOfTwo(scheme.Data, scheme.Data), "pictures that the cartridge's own chip reads; it is on no bus of the console's")];
}
