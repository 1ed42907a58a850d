using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;

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

        var build = new CartBuild([]) { Manifest = manifest, Settings = request.Overrides.Merged, OutputFolder = source.OutputFolder(manifest, log), OutputPlace = source.OutputPlace(manifest) };
        if (FindPlatform(manifest, log) is not { } platform)
        {
            return build;
        }

        var layout = platform.Layout(manifest.Header);
        var placer = new SegmentPlacer(layout.Regions, layout.Addresses, region => manifest.Regions.GetValueOrDefault(region)?.Size, log);
        var programs = source.ReadPrograms(manifest, placer, log);
        var parts = new RomRequest([.. programs.SelectMany(static program => program.Placed)], manifest.Header)
        {
            Title = manifest.Cart.Title,
            Revision = manifest.Cart.Revision,
            Regions = manifest.Regions,
            Place = manifest.Place,
        };

        build = build with { Platform = platform, Inputs = [source.ManifestInput(manifest), .. programs] };
        var programsAreWhole = !log.HasErrors;
        var board = BoardChoice.Find(manifest.Board, manifest.Cart.Name.Text, log);
        RomAssembler.CheckSettings(platform, layout, parts, log);
        if (!programsAreWhole || RomAssembler.Assemble(platform, layout, parts, log) is not { } cart)
        {
            return build;
        }

        var chips = board is null ? [] : BuildChips(board, platform, manifest, cart, log);
        build = build with { Cart = cart, Board = board, Chips = chips };
        return build with { Files = CartOutput.Plan(build, log) };
    }

    private Platform? FindPlatform(CartManifest manifest, FindingLog log)
    {
        var name = manifest.Cart.Platform;
        var platform = platforms.Find(name.Text);
        if (platform is null)
        {
            log.Add(ManifestFindings.UnknownPlatform, name.Place, $"There is no platform `{name.Text}`.",
                $"one of {string.Join(", ", platforms.All.Select(static known => known.Facts.Id))}", platforms.Question(name.Text));
        }

        return platform;
    }

    private static ImmutableArray<ChipImage> BuildChips(Board board, Platform platform, CartManifest manifest, CartView cart, FindingLog log)
    {
        BoardChoice.Check(board, platform, manifest.Board, cart, log);
        return new ChipImageBuilder(board, manifest.Board, manifest.Images, log).Build(cart.Rom);
    }
}
