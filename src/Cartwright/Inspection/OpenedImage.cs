using System.Collections.Immutable;
using Cartwright.Manifests;
using Cartwright.Platforms;

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

    /// <summary>The regions in the console's order, and the headers as they stand.</summary>
    public required CartView Cart { get; init; }

    /// <summary>Whether a build has the regions and containers of the image, byte for byte.</summary>
    /// <param name="cart">What was built.</param>
    public bool IsSameAs(CartView cart) =>
        cart.Rom.Regions.Length == Cart.Rom.Regions.Length
        && cart.Rom.Regions.All(region => region.Bytes.Span.SequenceEqual(Cart.Bytes(region.Name)))
        && Containers(cart).SequenceEqual(Containers(Cart));

    private static IEnumerable<byte> Containers(CartView cart) => cart.Headers.SelectMany(static header => header.Container);
}
