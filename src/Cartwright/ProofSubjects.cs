using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Chips;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Plans;
using Cartwright.Proofs;
using Cartwright.ReadBacks;

namespace Cartwright;

/// <summary>Decides what was read, one chip by itself or the whole cartridge, and what each chip should show then.</summary>
/// <param name="task">What is to be proved.</param>
/// <param name="expected">What the cartridge should hold.</param>
/// <param name="otherSites">Images of other sites that are no part of the build.</param>
/// <param name="log">Receives what is wrong.</param>
internal sealed class ProofSubjects(ProofTask task, ExpectedCart expected, ImmutableArray<NamedImage> otherSites, FindingLog log)
{
    /// <summary>The chip that was read by itself; null where the reads are of the whole cartridge, or a finding says what is wrong.</summary>
    /// <param name="length">Bytes of the first read; 0 where there is none.</param>
    public ProofSubject? Chip(int length)
    {
        var named = task.Site is null ? expected.Sites : [.. expected.Sites.Where(site => string.Equals(site.Site.Name, task.Site, StringComparison.OrdinalIgnoreCase))];
        if (named.IsEmpty)
        {
            var names = expected.Sites.Select(static site => site.Site.Name).ToList();
            log.Add(ProofFindings.NoSuchSite, new SourcePlace("--site"), $"{expected.File} has no chip `{task.Site}`.", $"one of {string.Join(", ", names)}", NearestName.Question(task.Site!, names));
            return null;
        }

        if (expected.Board is null && (task.IsCartridge || task.Region is not null))
        {
            log.Add(ProofFindings.NoBoard, new SourcePlace(expected.File), $"{expected.File} is the file of one chip, and says nothing of a cartridge.");
            return null;
        }

        if (named is [var only])
        {
            return task.Site is null && IsCartridge(length) ? null : OfChip(only);
        }

        if (!IsCartridge(length))
        {
            log.Add(ProofFindings.WhichChip, new SourcePlace(task.Reads.FirstOrDefault()?.File ?? task.Expected),
                $"The build has the chips {string.Join(", ", expected.Sites.Select(static site => $"{site.Site.Name} ({ByteSize.Words(site.Bytes.Length)})"))}; {Lengths()}.");
        }

        return null;
    }

    /// <summary>The region that was read, when the reads are of the whole cartridge; null where a finding says what is wrong.</summary>
    /// <param name="length">Bytes of the first read; 0 where there is none.</param>
    public ExpectedRegion? Region(int length)
    {
        var regions = task.Region is null ? expected.Regions : [.. expected.Regions.Where(region => string.Equals(region.Name, task.Region, StringComparison.OrdinalIgnoreCase))];
        var fitting = regions.Where(region => region.Bytes.Length == length).ToList();
        if (fitting.Count == 1 || regions.Length == 1)
        {
            return fitting.Count == 1 ? fitting[0] : regions[0];
        }

        log.Add(ProofFindings.OtherLength, new SourcePlace(task.Reads.FirstOrDefault()?.File ?? task.Expected), $"Which region was read is not clear: {Lengths()}.", remedy: "Name the region with --region.");
        return null;
    }

    /// <summary>The chips that a read of a region shows, each with its part of the reads.</summary>
    public ImmutableArray<ProofSubject> Through(ExpectedRegion region)
    {
        var ranges = region.MayDiffer.AddRange(Checked(region.Bytes.Length));
        var sites = expected.Sites.Where(site => string.Equals(site.Site.Region, region.Name, StringComparison.OrdinalIgnoreCase)).ToList();
        var images = sites.ToDictionary(static site => site.Site.Name, site => SiteView.Of(expected.Board!, site.Site, region.Bytes));
        return
        [
            .. sites.Select(site => Completed(new ProofSubject(site.Site.Name, images[site.Site.Name], SiteView.Shape(expected.Board!, site.Site))
            {
                Part = site.Part,
                Lines = LineNames.ThroughBoard(site.Site, site.Bytes.Length),
                IsThroughBoard = true,
                MayDiffer = SiteView.Ranges(expected.Board!, site.Site, region.Bytes.Length, ranges),
                OtherSites = [.. sites.Where(other => other != site).Select(other => new NamedImage(other.Site.Name, images[other.Site.Name])), .. otherSites],
                BankSize = (task.BankSize > 0 ? task.BankSize : region.BankSize) / site.Site.Stride,
            }, site.PartName)),
        ];
    }

    private bool IsCartridge(int length) => expected.Board is not null
        && (task.IsCartridge || task.Region is not null || (expected.Sites.All(site => site.Bytes.Length != length) && expected.Regions.Any(region => region.Bytes.Length == length)));

    private ProofSubject OfChip(ExpectedSite site) => Completed(new ProofSubject(site.Site.Name, site.Bytes, site.Shape)
    {
        Part = site.Part,
        Lines = expected.Board is null ? LineNames.OfLooseChip : LineNames.OfChip(site.Site, site.Bytes.Length),
        MayDiffer = site.MayDiffer.AddRange(Checked(site.Bytes.Length)),
        OtherSites = [.. expected.Sites.Where(other => other != site).Select(static other => new NamedImage(other.Site.Name, other.Bytes)), .. otherSites],
        BankSize = task.BankSize,
    }, site.PartName);

    private ProofSubject Completed(ProofSubject subject, string? name)
    {
        var shape = subject.IsThroughBoard ? subject.Shape : ShapeOf(subject.Shape);
        var part = task.Part is null ? subject.Part : PartChecks.Find(task.Part, subject.Site, log, new SourcePlace("--part"));
        if (part is not null && !subject.IsThroughBoard && part.CapacityBytes != subject.Expected.Length && part.Evidence.SawCapacity)
        {
            log.Add(ProofFindings.OtherPart, new SourcePlace(task.Part is null ? expected.File : "--part"), $"The {part.Name} holds {ByteSize.Words(part.CapacityBytes)}, and the image has {ByteSize.Words(subject.Expected.Length)}.");
        }

        if (part is not null && task.Package is { } package && PinOutCatalog.BuiltIn.Find(part, package) is null)
        {
            log.Add(ProofFindings.UnknownPackage, new SourcePlace("--package"), $"The catalogue has no pin-out of the {part.Name} in the package {package}.");
        }

        if (shape.Width == 16 && int.IsOddInteger(subject.Expected.Length))
        {
            log.Add(ProofFindings.HalfWord, new SourcePlace(expected.File), $"{expected.File} has {ByteSize.Describe(subject.Expected.Length)}.");
        }

        return subject with { Shape = shape, Part = part, Package = task.Package, Sectors = SectorsOf(subject, part, task.Part ?? name, shape.Width) };
    }

    private static ImmutableArray<SectorGroup> SectorsOf(ProofSubject subject, Part? part, string? name, int width)
    {
        ImmutableArray<SectorGroup> map = part is null || subject.IsThroughBoard ? [] : WriteTarget.Of(part, PartVariant.MapOf(part, PartVariant.EndOf(part, name ?? part.Name)), width).Map;
        return SectorGroup.TotalOf(map) == subject.Expected.Length ? map : [];
    }

    private WordShape ShapeOf(WordShape known)
    {
        var width = task.Width ?? known.Width;
        return task.WordOrder is { } order ? ExpectedBuild.Shape(width, order, expected.Board?.ByteOrder ?? ByteOrder.BigEndian) : known with { Width = width };
    }

    private ImmutableArray<ByteRange> Checked(int length)
    {
        foreach (var range in task.MayDiffer.Where(range => range.Length == 0 || (long)range.Offset + range.Length > length))
        {
            log.Add(ProofFindings.BadRange, new SourcePlace("--may-differ"), string.Create(CultureInfo.InvariantCulture, $"{Number.Hex(range.Offset, 6)}+{range.Length} is not within {ByteSize.Describe(length)}."));
        }

        return log.HasErrors ? [] : task.MayDiffer;
    }

    private string Lengths() => expected.Regions.IsEmpty ? "nothing is known of what the cartridge shows"
        : $"through its edge the cartridge shows {string.Join(", ", expected.Regions.Select(static region => $"{region.Name} ({ByteSize.Words(region.Bytes.Length)})"))}";
}
