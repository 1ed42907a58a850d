using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms.GameBoy;

/// <summary>Game Boy and Game Boy Color.</summary>
public sealed class GameBoyPlatform : Platform
{
    private const long SmallestRom = 32 << 10;
    private const long LargestRom = 8 << 20;

    private static readonly ImmutableArray<RegionRule> Regions =
        [new(GameBoyHeader.Region, SizeRule.PowersOfTwo(SmallestRom, LargestRom), "program and data")];

    private static readonly GameBoyAddresses Addresses = new();

    /// <summary>The layout of all cartridges but those with an MMM01.</summary>
    public static PlatformLayout Standard { get; } = new("gb", Regions, [GameBoyHeader.Main], Addresses);

    /// <summary>The layout with an MMM01, which starts in its last 32 KiB: a second header is written there first.</summary>
    public static PlatformLayout Mmm01 { get; } = new("mmm01", Regions, [GameBoyHeader.Menu, GameBoyHeader.Main], Addresses);

    /// <inheritdoc/>
    public override PlatformFacts Facts => GameBoyFacts.Facts;

    /// <inheritdoc/>
    public override ImmutableArray<FindingRule> Findings => GameBoyFindings.All;

    /// <inheritdoc/>
    public override ImmutableArray<PlatformLayout> Layouts { get; } = [Standard, Mmm01];

    /// <inheritdoc/>
    public override RecognitionClaim? Recognise(ReadOnlySpan<byte> file) => GameBoyRecognition.Recognise(file);

    /// <inheritdoc/>
    public override PlatformLayout Layout(HeaderSettings settings) =>
        settings["cartridgeType"] is { } stated
        && CartridgeTypes.Words.TryParse(stated.Text, out var code)
        && CartridgeTypes.All.FirstOrDefault(type => type.Code == code)?.Controller == BankControllers.Mmm01
            ? Mmm01
            : Standard;

    /// <summary><c>gbc</c> when the CGB flag is set, whether it says "compatible" or "only", otherwise <c>gb</c>: common practice.</summary>
    /// <param name="cart">The finished ROM.</param>
    public override string Extension(CartView cart) => new GameBoyCart(cart, new FindingLog()).HasColor ? "gbc" : "gb";

    /// <inheritdoc/>
    public override void Check(CartView cart, FindingLog log)
    {
        var view = new GameBoyCart(cart, log);
        BootChecks.Run(view);
        ControllerChecks.Run(view);
        FieldChecks.Run(view);
    }
}
