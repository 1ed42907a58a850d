using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Images;
using Cartwright.Manifests;
using Cartwright.Production;
using Cartwright.Proofs;
using Cartwright.ReadBacks;
using Cartwright.Roms;

namespace Cartwright;

/// <summary>What a cartridge should hold, out of a build or a ROM.</summary>
internal static class ExpectedBuild
{
    /// <summary>Builds a manifest.</summary>
    public static ExpectedCart? OfManifest(ProofTask task, FindingLog log)
    {
        var build = CartBuilder.Default.Build(new BuildRequest(task.Expected) { Overrides = task.Overrides });
        Forward(build.Findings, log);
        if (build.HasErrors)
        {
            return null;
        }

        if (build.Board is not { } board)
        {
            log.Add(ProofFindings.NoBoard, new SourcePlace(task.Expected), $"{task.Expected} names no board.");
            return null;
        }

        var fields = build.Manifest!.Run.Fields;
        if (!AreSound(build, log))
        {
            return null;
        }

        var probe = fields.IsEmpty ? null : new UnitCart(build.Cart!, fields);
        var (low, high) = (probe?.Probe(byte.MinValue), probe?.Probe(byte.MaxValue));
        var chips = low is null ? [] : Chips(build, low).Zip(Chips(build, high!));
        var masks = chips.ToDictionary(static pair => pair.First.Site.Name, static pair => ByteRanges.Differing(pair.First.Bytes.Span, pair.Second.Bytes.Span));
        return new ExpectedCart(
            task.Expected,
            board,
            [.. build.Chips.Select(chip => Site(chip) with { MayDiffer = masks.GetValueOrDefault(chip.Site.Name, []) })],
            [.. build.Cart!.Rom.Regions.Where(region => IsOnChips(build.Chips, region)).Select(region => Region(region, build.Cart.Layout.Addresses.BankOf(region.Name)) with { MayDiffer = Mask(region.Name, low, high) })]);
    }

    /// <summary>Cuts a whole ROM for a board.</summary>
    public static ExpectedCart? OfRom(string file, Rom rom, Func<string, int> bankOf, Board board, string? part, WordOrder order, FindingLog log)
    {
        var own = new FindingLog();
        var parts = part is null ? [] : board.Sites.Select(site => KeyValuePair.Create(site.Name, new ManifestValue(part, new SourcePlace("--part"))));
        var chips = new ChipCutter(board, ImmutableSortedDictionary.CreateRange(StringComparer.OrdinalIgnoreCase, parts), order).Cut(rom, file, own);
        Forward(own.ToSorted(), log);
        return own.HasErrors ? null : new ExpectedCart(file, board, [.. chips.Select(Site)], [.. rom.Regions.Where(region => IsOnChips(chips, region)).Select(region => Region(region, bankOf(region.Name)))]);
    }

    // The fields of a run are checked when one is made; here nothing more than their places counts.
    private static bool AreSound(CartBuild build, FindingLog log)
    {
        var own = new FindingLog();
        if (!build.Manifest!.Run.Fields.IsEmpty)
        {
            new RunChecks(build.Manifest.Run, build.Cart!, own).Check();
        }

        Forward(own.ToSorted(), log);
        return !own.HasErrors;
    }

    public static WordShape Shape(int width, WordOrder order, ByteOrder bus) => new(width, order != WordOrder.Programmer && bus == ByteOrder.BigEndian);

    private static ExpectedSite Site(ChipImage chip) => new(chip.Site, chip.Bytes.ToArray(), Shape(chip.Site.Width, chip.WordOrder, chip.BusOrder)) { Part = chip.Part, PartName = chip.PartName };

    private static ExpectedRegion Region(RegionImage region, int bankSize) => new(region.Name, region.Bytes.ToArray()) { BankSize = bankSize };

    // A region that only lies in a join shows itself through lines that are not told here.
    private static bool IsOnChips(ImmutableArray<ChipImage> chips, RegionImage region) => chips.Any(chip => string.Equals(chip.Site.Region, region.Name, StringComparison.OrdinalIgnoreCase));

    private static ImmutableArray<ChipImage> Chips(CartBuild build, Rom rom) =>
        new ChipImageBuilder(build.Board!, build.Manifest!.Board, build.Manifest.Images, new FindingLog()).Build(rom);

    private static ImmutableArray<ByteRange> Mask(string region, Rom? low, Rom? high) =>
        low is null ? [] : ByteRanges.Differing(low[region]!.Bytes.Span, high![region]!.Bytes.Span);

    // What a build has to say besides has been said when it was built.
    private static void Forward(ImmutableArray<Finding> findings, FindingLog log)
    {
        log.AddAll(findings.Where(static finding => finding.Severity == FindingSeverity.Error));
    }
}
