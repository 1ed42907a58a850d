using System.Collections.Immutable;
using Cartwright.Platforms;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>An example of the repository, built in memory.</summary>
/// <param name="Name">The cart's name.</param>
/// <param name="Build">The build.</param>
internal sealed record ExampleCart(string Name, CartBuild Build)
{
    private byte[]? _file;

    /// <summary>All of them, of whatever platforms there are.</summary>
    public static ImmutableSortedDictionary<string, ExampleCart> All { get; } =
        Directory.EnumerateFiles(Path.Combine(Approved.Root, "examples"), "cart.json", SearchOption.AllDirectories)
            .Select(static manifest => CartBuilder.Default.Build(new BuildRequest(manifest)))
            .Select(static build => new ExampleCart(build.Manifest!.Cart.Name.Text, build))
            .ToImmutableSortedDictionary(static cart => cart.Name, static cart => cart, StringComparer.Ordinal);

    public Platform Platform => Build.Platform!;

    public CartView Cart => Build.Cart!;

    /// <summary>Whether the platform recognises anything at all.</summary>
    public bool IsRecognised => Platform.GetType().GetMethod(nameof(Platform.Recognise))!.DeclaringType != typeof(Platform);

    /// <summary>Bytes of the exchange file before the first region's.</summary>
    public int RomStart => Platform.Exchange(Cart).TakeWhile(part => !Cart.Rom.Regions[0].Bytes.Span.StartsWith(part.Span)).Sum(part => part.Length);

    /// <summary>The exchange file.</summary>
    public byte[] File => _file ??= [.. Platform.Exchange(Cart).SelectMany(static part => part.ToArray())];
}
