using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.Inspection;

/// <summary>An existing image, taken apart and read by the tables that build one.</summary>
/// <param name="File">The file as the user named it.</param>
/// <param name="Bytes">The whole file.</param>
/// <param name="Ranked">Every platform's claim on it, the surest first.</param>
/// <param name="Found">The platform it was read as, and its claim.</param>
public sealed record OpenedImage(string File, ReadOnlyMemory<byte> Bytes, ImmutableArray<RecognisedPlatform> Ranked, RecognisedPlatform Found)
{
    /// <summary>The options that lead to the layout.</summary>
    public required HeaderSettings Options { get; init; }

    /// <summary>Where containers and regions lie in the file.</summary>
    public required ImmutableArray<ImagePart> Parts { get; init; }

    /// <summary>The processor's vectors as the programs have them.</summary>
    public ImmutableArray<HeaderImage> Vectors { get; init; } = [];

    /// <summary>The regions in the console's order, and the headers as they stand.</summary>
    public required CartView Cart { get; init; }

    /// <summary>The bytes of a header.</summary>
    /// <param name="header">One of the image's.</param>
    public ReadOnlySpan<byte> Raw(HeaderImage header) =>
        header.Table.Region is { } region ? Cart.Bytes(region).Slice(header.Entries[0].Offset - header.Entries[0].Field.Offset, header.Table.Length) : header.Container.AsSpan();

    /// <summary>What is known of the image before its fields are read.</summary>
    /// <param name="regions">The bytes of its regions, for checksums kept outside them.</param>
    internal HeaderContext Context(Func<string, ReadOnlyMemory<byte>> regions)
    {
        var context = new HeaderContext(null, null, Cart.Rom.LengthOf) { RegionBytes = regions };
        context.SetAll(Options);
        return context;
    }

    /// <summary>True when the image is one region, from its start, of a length no ROM has, so that a build can only be longer.</summary>
    public bool IsShort =>
        Cart.Rom.Regions is [var region] && Cart.Layout.Regions[0] is { Align: RegionAlign.Start } rule
        && Parts is [{ Region: not null }] && !rule.Sizes.Allows(region.Length) && rule.Sizes.Fit(region.Length) is not null;

    /// <summary>Whether a build has the regions and containers of the image, byte for byte.</summary>
    /// <param name="cart">What was built.</param>
    public bool IsSameAs(CartView cart) =>
        cart.Rom.Regions.Length == Cart.Rom.Regions.Length
        && cart.Rom.Regions.All(IsSame)
        && Containers(cart).SequenceEqual(Containers(Cart));

    // A ROM of legal size may be longer by fill, which the exchange file then leaves out.
    private bool IsSame(RegionImage built)
    {
        var own = Cart.Bytes(built.Name);
        var whole = built.Bytes.Span;
        return whole.StartsWith(own) && !whole[own.Length..].ContainsAnyExcept(built.Fill) && (IsShort || whole.Length == own.Length);
    }

    private static IEnumerable<byte> Containers(CartView cart) => cart.Headers.SelectMany(static header => header.Container);
}
