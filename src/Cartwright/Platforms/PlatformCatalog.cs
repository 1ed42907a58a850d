using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms;

/// <summary>Platforms to choose from. A platform's tables are made when it is first asked for.</summary>
public sealed class PlatformCatalog
{
    private readonly ImmutableArray<(PlatformFacts Facts, Lazy<Platform> Platform)> _rows;

    private PlatformCatalog(ImmutableArray<(PlatformFacts Facts, Lazy<Platform> Platform)> rows) => _rows = rows;

    /// <summary>A catalogue of these platforms.</summary>
    /// <param name="platforms">The platforms, in the order they are listed.</param>
    public PlatformCatalog(ImmutableArray<Platform> platforms)
        : this([.. platforms.Select(static platform => (platform.Facts, new Lazy<Platform>(platform)))])
    {
    }

    /// <summary>The platforms built in, in order of id.</summary>
    public static PlatformCatalog BuiltIn { get; } = new(
    [
        Row(MegaDrive.Sega32XFacts.Facts, static () => new MegaDrive.Sega32XPlatform()),
        Row(Atari2600.Atari2600Facts.Facts, static () => new Atari2600.Atari2600Platform()),
        Row(Atari8Bit.Atari5200Facts.Facts, static () => new Atari8Bit.Atari5200Platform()),
        Row(Atari7800.Atari7800Facts.Facts, static () => new Atari7800.Atari7800Platform()),
        Row(Atari8Bit.Atari8BitFacts.Facts, static () => new Atari8Bit.Atari8BitPlatform()),
        Row(Commodore.C128Facts.Facts, static () => new Commodore.C128Platform()),
        Row(Commodore.C64Facts.Facts, static () => new Commodore.C64Platform()),
        Row(ColecoVision.ColecoFacts.Facts, static () => new ColecoVision.ColecoPlatform()),
        Row(GameBoy.GameBoyFacts.Facts, static () => new GameBoy.GameBoyPlatform()),
        Row(GameBoyAdvance.AdvanceFacts.Facts, static () => new GameBoyAdvance.AdvancePlatform()),
        Row(MasterSystem.SegaFacts.GameGear, MasterSystem.SegaPlatform.GameGear),
        Row(Intellivision.IntvFacts.Facts, static () => new Intellivision.IntvPlatform()),
        Row(Lynx.LynxFacts.Facts, static () => new Lynx.LynxPlatform()),
        Row(MegaDrive.MegaDriveFacts.Facts, static () => new MegaDrive.MegaDrivePlatform()),
        Row(Msx.MsxFacts.Facts, static () => new Msx.MsxPlatform()),
        Row(Nintendo64.N64Facts.Facts, static () => new Nintendo64.N64Platform()),
        Row(Nes.NesFacts.Facts, static () => new Nes.NesPlatform()),
        Row(NeoGeoPocket.PocketFacts.Facts, static () => new NeoGeoPocket.PocketPlatform()),
        Row(PcEngine.PcEngineFacts.Facts, static () => new PcEngine.PcEnginePlatform()),
        Row(MasterSystem.SegaFacts.Sg1000, MasterSystem.SegaPlatform.Sg1000),
        Row(MasterSystem.SegaFacts.MasterSystem, MasterSystem.SegaPlatform.MasterSystem),
        Row(Snes.SnesFacts.Facts, static () => new Snes.SnesPlatform()),
        Row(Vectrex.VectrexFacts.Facts, static () => new Vectrex.VectrexPlatform()),
        Row(VirtualBoy.VirtualBoyFacts.Facts, static () => new VirtualBoy.VirtualBoyPlatform()),
        Row(Commodore.Vic20Facts.Facts, static () => new Commodore.Vic20Platform()),
        Row(WonderSwan.SwanFacts.Facts, static () => new WonderSwan.SwanPlatform()),
    ]);

    /// <summary>All of them.</summary>
    public ImmutableArray<Platform> All => [.. _rows.Select(static row => row.Platform.Value)];

    /// <summary>A platform by id or alias, letter case ignored; null when there is none.</summary>
    /// <param name="name">The id or alias.</param>
    public Platform? Find(string name)
    {
        foreach (var row in _rows)
        {
            if (Names(row.Facts).Contains(name.Trim(), StringComparer.OrdinalIgnoreCase))
            {
                return row.Platform.Value;
            }
        }

        return null;
    }

    /// <summary>A catalogue with one more platform.</summary>
    /// <param name="platform">The platform to add.</param>
    public PlatformCatalog With(Platform platform) => new([.. _rows, (platform.Facts, new Lazy<Platform>(platform))]);

    /// <summary>"Did you mean …?" for an unknown name; null when nothing is near.</summary>
    /// <param name="name">What the user wrote.</param>
    public string? Question(string name) => NearestName.Question(name, _rows.SelectMany(static row => Names(row.Facts)));

    private static (PlatformFacts Facts, Lazy<Platform> Platform) Row(PlatformFacts facts, Func<Platform> make) => (facts, new Lazy<Platform>(make));

    private static IEnumerable<string> Names(PlatformFacts facts) => facts.Aliases.Prepend(facts.Id);
}
