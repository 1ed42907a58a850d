using System.Collections.Immutable;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Cli;

/// <summary>The parts at a board's sites, as far as the catalogue has them, with the pin-outs each may have.</summary>
internal sealed class FittedChips
{
    private readonly Dictionary<string, (Part Part, ImmutableArray<PinOut> PinOuts)> _chips = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Looks the parts up.</summary>
    public static FittedChips Of(Board? board, IEnumerable<ChipSettings> chips, FindingLog log)
    {
        var fitted = new FittedChips();
        foreach (var chip in chips)
        {
            var sites = board?.Sites.Select(static site => site.Name).ToList() ?? [];
            if (board is not null && !sites.Contains(chip.Site, StringComparer.OrdinalIgnoreCase))
            {
                log.Add(BoardFindings.UnknownSite, chip.Place, $"The board {board.Id} has no site `{chip.Site}`.", $"one of {string.Join(", ", sites)}", NearestName.Question(chip.Site, sites));
            }
            else if (chip.Part is { } name && (PartCatalog.BuiltIn.Find(name.Text) is not null || chip.Capacity is null) && PartChecks.Find(name.Text, chip.Site, log, name.Place) is { } part)
            {
                fitted._chips[chip.Site] = (part, PinOuts(part, chip.Package, log));
            }
        }

        return fitted;
    }

    /// <summary>The part at a site; null when it is not known.</summary>
    public Part? PartAt(Site site) => _chips.TryGetValue(site.Name, out var chip) ? chip.Part : null;

    /// <summary>The lines of a site.</summary>
    public LineTable LinesOf(Site site) => _chips.TryGetValue(site.Name, out var chip) ? new LineTable(site, chip.Part, chip.PinOuts) : new LineTable(site, null, []);

    private static ImmutableArray<PinOut> PinOuts(Part part, ManifestValue? package, FindingLog log)
    {
        var all = PinOutCatalog.BuiltIn.Of(part);
        if (package is null)
        {
            return all;
        }

        if (PinOutCatalog.BuiltIn.Find(part, package.Text) is { } own)
        {
            return [own];
        }

        log.Add(OwnPartFindings.NoPinOut, package.Place, $"No pin-out of the {part.Name} in {package} is known.", all.IsEmpty ? null : $"one of {string.Join(", ", all.Select(static pinOut => pinOut.Package))}");
        return [];
    }
}
