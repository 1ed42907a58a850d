using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms;

/// <summary>The platforms that are built in. A program may bring its own besides.</summary>
/// <param name="platforms">The platforms, in order of id.</param>
public sealed class PlatformCatalog(ImmutableArray<Platform> platforms)
{
    /// <summary>All of them.</summary>
    public ImmutableArray<Platform> All => platforms;

    /// <summary>A platform by id or alias, letter case ignored; null when there is none.</summary>
    /// <param name="name">The id or alias.</param>
    public Platform? Find(string name) =>
        platforms.FirstOrDefault(platform => Names(platform).Contains(name.Trim(), StringComparer.OrdinalIgnoreCase));

    /// <summary>A catalogue with one more platform.</summary>
    /// <param name="platform">The platform to add.</param>
    public PlatformCatalog With(Platform platform) => new([.. platforms, platform]);

    /// <summary>"Did you mean …?" for an unknown name; null when nothing is near.</summary>
    /// <param name="name">What the user wrote.</param>
    public string? Question(string name) => NearestName.Question(name, platforms.SelectMany(Names));

    private static IEnumerable<string> Names(Platform platform) => platform.Facts.Aliases.Prepend(platform.Facts.Id);

    /// <summary>The platforms built in.</summary>
    public static PlatformCatalog BuiltIn { get; } = new(
    [
        new GameBoy.GameBoyPlatform(),
        new MegaDrive.MegaDrivePlatform(),
        new Nes.NesPlatform(),
        new Snes.SnesPlatform(),
    ]);
}
