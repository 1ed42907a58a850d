using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;
using Cartwright.Slots;

namespace Cartwright;

/// <summary>The whole line from a manifest to chip images: read, load, place, fill in the header, cut for the board.</summary>
/// <param name="platforms">The platforms to choose from.</param>
public sealed class CartBuilder(PlatformCatalog platforms)
{
    /// <summary>A builder with the platforms that are built in.</summary>
    public static CartBuilder Default { get; } = new(PlatformCatalog.BuiltIn);

    /// <summary>Builds a cart in memory.</summary>
    /// <param name="request">What to build.</param>
    /// <returns>The build; whatever was wrong is among its findings.</returns>
    public CartBuild Build(BuildRequest request)
    {
        var log = new FindingLog();
        var build = Build(request, log);
        return build with { Findings = log.ToSorted() };
    }

    private CartBuild Build(BuildRequest request, FindingLog log)
    {
        var source = new BuildSource(request);
        if (source.ReadManifest(log) is not { } manifest)
        {
            return new CartBuild([]);
        }

        var build = new CartBuild([]) { Manifest = manifest, Settings = request.Overrides.ByKey, OutputFolder = source.OutputFolder(manifest, log), OutputPlace = source.OutputPlace(manifest) };
        if (FindPlatform(manifest, log) is not { } platform)
        {
            return build with { Board = BoardChoice.Find(manifest.Board, manifest.Cart.Name.Text, log) };
        }

        var layout = platform.Layout(manifest.Header);
        var placer = new SegmentPlacer(layout.Regions, layout.Places, layout.Addresses, region => manifest.Regions.GetValueOrDefault(region)?.Size, log);
        var programs = source.ReadPrograms(manifest, platform, placer, log);
        ImmutableArray<PlacedSegment> placed = [.. programs.SelectMany(static program => program.Placed)];
        var slots = manifest.Slots is { } settings
            ? new SlotBuilder(new ImageOpener(platforms), platform, layout, manifest, log).Build(settings, placed, placer, game => source.ReadGame(game, log))
            : null;
        var parts = new RomRequest(slots?.Segments ?? placed, manifest.Header)
        {
            Title = manifest.Cart.Title,
            Revision = manifest.Cart.Revision,
            Regions = manifest.Regions,
            Place = manifest.Place,
        };

        var programsAreWhole = !log.HasErrors;
        var board = BoardChoice.Find(manifest.Board, manifest.Cart.Name.Text, log);
        build = build with { Platform = platform, Board = board, Inputs = [source.ManifestInput(manifest), .. programs, .. slots?.Inputs ?? []], Slots = slots?.Plan };
        RomAssembler.CheckSettings(platform, layout, parts, log);
        if (!programsAreWhole || Assemble(platform, layout, parts, slots?.Plan, log) is not { } cart)
        {
            return build;
        }

        CheckConflicts(manifest, cart, log);
        var chips = board is null ? [] : BuildChips(board, platform, manifest, cart, log);
        build = build with { Cart = cart, Chips = chips };
        var files = CartOutput.Plan(build, log);
        return build with { Files = log.HasErrors ? [] : files };
    }

    private static CartView? Assemble(Platform platform, PlatformLayout layout, RomRequest parts, SlotPlan? slots, FindingLog log) =>
        slots is { HasMenu: false } ? RomAssembler.AssembleFinished(layout, parts, log) : RomAssembler.Assemble(platform, layout, parts, log);

    // The sizes are settled by now, so that addresses need no bank.
    private static void CheckConflicts(CartManifest manifest, CartView cart, FindingLog log)
    {
        var (rom, layout) = (cart.Rom, cart.Layout);
        var tables = new ConflictTableCheck(new SegmentPlacer(layout.Regions, layout.Places, layout.Addresses, region => rom.LengthOf(region), log), log);
        foreach (var table in manifest.ConflictTables)
        {
            tables.Check(table, rom);
        }
    }

    private Platform? FindPlatform(CartManifest manifest, FindingLog log)
    {
        var name = manifest.Cart.Platform;
        var platform = platforms.Find(name.Text);
        if (platform is null)
        {
            log.Add(ManifestFindings.UnknownPlatform, name.Place, $"There is no platform `{name.Text}`.",
                "an id that `cartwright platforms` lists", platforms.Question(name.Text));
        }

        return platform;
    }

    private static ImmutableArray<ChipImage> BuildChips(Board board, Platform platform, CartManifest manifest, CartView cart, FindingLog log)
    {
        BoardChoice.Check(board, manifest.Board, [platform.Facts.Id, .. platform.Facts.Aliases], field => cart[field] ?? platform.Word(manifest.Header, field), log);
        return new ChipImageBuilder(board, manifest.Board, manifest.Images, log).Build(cart.Rom);
    }
}
