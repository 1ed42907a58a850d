using System.Collections.Immutable;
using Cartwright.Findings;

namespace Cartwright.Platforms;

/// <summary>Platforms to choose from. A platform's tables are made when it is first asked for.</summary>
public sealed class PlatformCatalog
{
    private readonly ImmutableArray<PlatformRow> _rows;

    private PlatformCatalog(ImmutableArray<PlatformRow> rows) => _rows = rows;

    /// <summary>A catalogue of these platforms.</summary>
    /// <param name="platforms">The platforms, in the order they are listed.</param>
    public PlatformCatalog(ImmutableArray<Platform> platforms)
        : this([.. platforms.Select(Row)])
    {
    }

    /// <summary>The platforms built in, in order of id.</summary>
    public static PlatformCatalog BuiltIn { get; } = new(
    [
        Row("32x", static () => MegaDrive.Sega32XFacts.Facts, static () => new MegaDrive.Sega32XPlatform()),
        Row("a2600", static () => Atari2600.Atari2600Facts.Facts, static () => new Atari2600.Atari2600Platform()),
        Row("a5200", static () => Atari8Bit.Atari5200Facts.Facts, static () => new Atari8Bit.Atari5200Platform()),
        Row("a7800", static () => Atari7800.Atari7800Facts.Facts, static () => new Atari7800.Atari7800Platform()),
        Row("a8bit", static () => Atari8Bit.Atari8BitFacts.Facts, static () => new Atari8Bit.Atari8BitPlatform()),
        Row("c128", static () => Commodore.C128Facts.Facts, static () => new Commodore.C128Platform()),
        Row("c64", static () => Commodore.C64Facts.Facts, static () => new Commodore.C64Platform()),
        Row("coleco", static () => ColecoVision.ColecoFacts.Facts, static () => new ColecoVision.ColecoPlatform()),
        Row("gb", static () => GameBoy.GameBoyFacts.Facts, static () => new GameBoy.GameBoyPlatform()),
        Row("gba", static () => GameBoyAdvance.AdvanceFacts.Facts, static () => new GameBoyAdvance.AdvancePlatform()),
        Row("gg", static () => MasterSystem.SegaFacts.GameGear, MasterSystem.SegaPlatform.GameGear),
        Row("intv", static () => Intellivision.IntvFacts.Facts, static () => new Intellivision.IntvPlatform()),
        Row("lynx", static () => Lynx.LynxFacts.Facts, static () => new Lynx.LynxPlatform()),
        Row("md", static () => MegaDrive.MegaDriveFacts.Facts, static () => new MegaDrive.MegaDrivePlatform()),
        Row("msx", static () => Msx.MsxFacts.Facts, static () => new Msx.MsxPlatform()),
        Row("n64", static () => Nintendo64.N64Facts.Facts, static () => new Nintendo64.N64Platform()),
        Row("nes", static () => Nes.NesFacts.Facts, static () => new Nes.NesPlatform()),
        Row("ngp", static () => NeoGeoPocket.PocketFacts.Facts, static () => new NeoGeoPocket.PocketPlatform()),
        Row("pce", static () => PcEngine.PcEngineFacts.Facts, static () => new PcEngine.PcEnginePlatform()),
        Row("sg1000", static () => MasterSystem.SegaFacts.Sg1000, MasterSystem.SegaPlatform.Sg1000),
        Row("sms", static () => MasterSystem.SegaFacts.MasterSystem, MasterSystem.SegaPlatform.MasterSystem),
        Row("snes", static () => Snes.SnesFacts.Facts, static () => new Snes.SnesPlatform()),
        Row("vectrex", static () => Vectrex.VectrexFacts.Facts, static () => new Vectrex.VectrexPlatform()),
        Row("vb", static () => VirtualBoy.VirtualBoyFacts.Facts, static () => new VirtualBoy.VirtualBoyPlatform()),
        Row("vic20", static () => Commodore.Vic20Facts.Facts, static () => new Commodore.Vic20Platform()),
        Row("ws", static () => WonderSwan.SwanFacts.Facts, static () => new WonderSwan.SwanPlatform()),
    ]);

    /// <summary>All of them.</summary>
    public ImmutableArray<Platform> All => [.. _rows.Select(static row => row.Platform.Value)];

    /// <summary>A platform by id or alias, letter case ignored; null when there is none.</summary>
    /// <param name="name">The id or alias.</param>
    public Platform? Find(string name)
    {
        var wanted = name.Trim();
        return (Row(row => Same(row.Id, wanted)) ?? Row(row => row.Facts().Aliases.Contains(wanted, StringComparer.OrdinalIgnoreCase)))?.Platform.Value;
    }

    /// <summary>A catalogue with one more platform.</summary>
    /// <param name="platform">The platform to add.</param>
    public PlatformCatalog With(Platform platform) => new([.. _rows, Row(platform)]);

    /// <summary>"Did you mean …?" for an unknown name; null when nothing is near.</summary>
    /// <param name="name">What the user wrote.</param>
    public string? Question(string name) => NearestName.Question(name, _rows.SelectMany(static row => row.Facts().Aliases.Prepend(row.Id)));

    private PlatformRow? Row(Predicate<PlatformRow> fits)
    {
        foreach (var row in _rows)
        {
            if (fits(row))
            {
                return row;
            }
        }

        return null;
    }

    private static PlatformRow Row(string id, Func<PlatformFacts> facts, Func<Platform> make) => new(id, facts, new Lazy<Platform>(make));

    private static PlatformRow Row(Platform platform) => new(platform.Facts.Id, () => platform.Facts, new Lazy<Platform>(platform));

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);

    // Facts are many texts: they are made when a name is no id, or a page is wanted.
    private sealed record PlatformRow(string Id, Func<PlatformFacts> Facts, Lazy<Platform> Platform);
}
