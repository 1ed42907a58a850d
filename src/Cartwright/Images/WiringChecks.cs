using System.Globalization;
using Cartwright.Boards;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Images;

/// <summary>Checks the lines of a site against the chip fitted there and the slice it holds.</summary>
/// <param name="site">The site.</param>
/// <param name="chip">What the chip is called in messages.</param>
/// <param name="fitted">What the manifest says of it; null where it says nothing.</param>
/// <param name="log">Receives what is wrong.</param>
/// <param name="place">Where the chip is named.</param>
internal sealed class WiringChecks(Site site, string chip, ChipSettings? fitted, FindingLog log, SourcePlace place)
{
    /// <summary>Checks the lines.</summary>
    /// <param name="needed">Bytes of the slice.</param>
    /// <param name="capacity">Bytes of the chip.</param>
    /// <param name="part">The part; null when it is not known.</param>
    /// <returns>False when no chip image can be made.</returns>
    public bool Check(int needed, int capacity, Part? part)
    {
        if (site.Select is { LacksInverter: true, Line: var enable })
        {
            log.Add(BoardFindings.NoInverter, place, $"{site.Name} is to answer when {enable} is {(site.Select.IsHigh ? "high" : "low")}, and {(site.Select.HasInverter ? "an inverter turns that into a high enable" : "nothing turns that into a low enable")}.");
        }

        CheckAccess(part);
        CheckOutputEnable();
        return CheckLines(needed, capacity);
    }

    private void CheckAccess(Part? part)
    {
        if (site.AccessNs is not { } window)
        {
            return;
        }

        if (fitted?.AccessNs is { } takes)
        {
            Compare(window, takes, "address or enable");
        }
        else if (part is { AccessNanoseconds: { IsEmpty: false } grades } && grades[^1] > window)
        {
            log.Add(BoardFindings.TooSlow, place, string.Create(CultureInfo.InvariantCulture,
                $"{site.Name} leaves {window} ns, and the {part.Name} is made in grades of {string.Join(", ", grades)} ns."),
                string.Create(CultureInfo.InvariantCulture, $"a grade of {window} ns or less, stated as `accessNs` of the chip"));
        }
    }

    private void CheckOutputEnable()
    {
        if (site.OutputEnableNs is not { } window)
        {
            return;
        }

        if (fitted?.OutputEnableNs is { } takes)
        {
            Compare(window, takes, "output enable");
        }
        else
        {
            log.Add(BoardFindings.OutputEnableUnknown, place, string.Create(CultureInfo.InvariantCulture, $"{site.Name} leaves {window} ns from output enable to data, and what {chip} takes is not stated."));
        }
    }

    private void Compare(double window, double takes, string from)
    {
        if (takes > window)
        {
            log.Add(BoardFindings.TooSlow, place, string.Create(CultureInfo.InvariantCulture, $"{site.Name} leaves {window} ns from {from} to data, and {chip} takes {takes} ns."),
                string.Create(CultureInfo.InvariantCulture, $"{window} ns or less"));
        }
    }

    private bool CheckLines(int needed, int capacity)
    {
        if (site.AddressLines.IsEmpty && site.Ties.IsEmpty)
        {
            return true;
        }

        if (!SiteLines.Fit(site, capacity))
        {
            log.Add(BoardFindings.MoreLines, place, string.Create(CultureInfo.InvariantCulture,
                $"{chip} at {site.Name} has {ByteSize.Describe(capacity)}, and the site names its line A{(site.AddressLines.IsEmpty ? 0 : site.AddressLines.Max())}."));
            return false;
        }

        var lines = new SiteLines(site, capacity);
        var driven = Enumerable.Range(0, lines.DrivenBy(needed)).Select(line => lines.Order[line]).ToHashSet();
        var twice = site.Ties.Keys.Where(driven.Contains).ToList();
        foreach (var line in twice)
        {
            log.Add(BoardFindings.LineUsedTwice, place, string.Create(CultureInfo.InvariantCulture,
                $"A{line} of {site.Name} is tied, and the bus drives it for a slice of {ByteSize.Describe(needed)}."));
        }

        foreach (var (line, _) in site.Ties.Where(tie => tie.Value == LineTie.Open && tie.Key < lines.Count && !driven.Contains(tie.Key)))
        {
            log.Add(BoardFindings.OpenLine, place, string.Create(CultureInfo.InvariantCulture, $"A{line} of {site.Name} is open; its slice is in the chip for both levels."));
        }

        return twice.Count == 0;
    }
}
