using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Images;
using Cartwright.Inspection;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Programs;
using Cartwright.Roms;

namespace Cartwright.Slots;

/// <summary>Puts finished games into one image.</summary>
/// <param name="opener">Opens the games' images.</param>
/// <param name="platform">The cart's platform.</param>
/// <param name="layout">Its layout.</param>
/// <param name="manifest">The manifest.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class SlotBuilder(ImageOpener opener, Platform platform, PlatformLayout layout, CartManifest manifest, FindingLog log)
{
    private readonly ImmutableArray<string> _regions = [.. layout.Regions.Select(static rule => rule.Name)];

    /// <summary>Lays out the games.</summary>
    /// <param name="settings">What the manifest says.</param>
    /// <param name="programs">The cart's own programs at their places: a menu, or none.</param>
    /// <param name="placer">Finds the directory's place.</param>
    /// <param name="read">Reads a game's file; null when it cannot be read, which has been told.</param>
    public SlotBuild Build(SlotSettings settings, ImmutableArray<PlacedSegment> programs, SegmentPlacer placer, Func<SlotGame, byte[]?> read)
    {
        var hasMenu = !manifest.Programs.IsEmpty;
        var planner = new SlotPlanner(programs, log);
        var slots = ImmutableArray.CreateBuilder<PlacedSlot>();
        var inputs = ImmutableArray.CreateBuilder<BuildInput>();
        for (var index = 0; index < settings.Games.Length; index++)
        {
            var game = settings.Games[index];
            if (read(game) is { } bytes && Open(game, bytes) is { } image)
            {
                slots.AddRange(planner.Place(index, game, image.Cart.Rom));
                inputs.Add(new BuildInput(ProgramEntry.NameOf(game.File), "image", bytes, []));
            }
        }

        var table = new SwitchTable(slots.ToImmutable(), _regions, log);
        var positions = log.HasErrors ? [] : table.Positions(settings.Switches);
        if (!positions.IsEmpty)
        {
            table.CheckReach(positions, settings.Games);
        }

        var plan = new SlotPlan(slots.ToImmutable(), settings.Switches, positions, hasMenu);
        return new SlotBuild(Segments(settings, programs, plan, placer), inputs.ToImmutable(), plan);
    }

    private OpenedImage? Open(SlotGame game, byte[] bytes)
    {
        var shown = ProgramEntry.NameOf(game.File);
        var recognised = opener.Open(shown, bytes, null, new FindingLog());
        if (recognised?.Found.Platform != platform)
        {
            log.Add(SlotFindings.NotRecognised, game.File.Place, $"{shown} is not recognised as an image for {platform.Facts.Id}{(recognised is { } other ? $", but as one for {other.Found.Platform.Facts.Id}" : "")}.");
            return opener.Open(shown, bytes, platform, log);
        }

        new ImageExamination(recognised, log).Run();
        return recognised;
    }

    private ImmutableArray<PlacedSegment> Segments(SlotSettings settings, ImmutableArray<PlacedSegment> programs, SlotPlan plan, SegmentPlacer placer)
    {
        var games = plan.Slots.Select(slot => new PlacedSegment(slot.Region, FromEnd(slot, plan.HasMenu), slot.Bytes, slot.File, settings.Games[slot.Index].Place));
        if (settings.Directory is not { } directory)
        {
            return [.. programs, .. games];
        }

        var block = new Segment(0, new DirectoryWriter(directory, _regions, log).Write(settings.Games, plan.Slots), directory.At.Place);
        var placed = placer.Place(directory.At, new ProgramFile(directory.At.ShownName, ProgramFormat.Raw, [block]));
        return [.. placed.Aggregate(programs, DirectoryRoom.Clear), .. games, .. placed];
    }

    // Where a platform's programs lie at the end of a region, what is to stay where it is counts back from there.
    private long FromEnd(PlacedSlot slot, bool hasMenu)
    {
        var rule = layout.Regions.First(rule => rule.Name == slot.Region);
        if (!hasMenu || rule.Align == RegionAlign.Start)
        {
            return slot.Start;
        }

        if (manifest.Regions.GetValueOrDefault(slot.Region)?.Size is { } size)
        {
            return slot.Start - size;
        }

        log.Add(SlotFindings.NeedsSize, manifest.Slots!.Place, $"The region `{slot.Region}` of {platform.Facts.Id} has no stated size.");
        return slot.Start;
    }
}
