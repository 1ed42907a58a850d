using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Inspection;

/// <summary>Says what is wrong with an existing image: its place in the file, its sizes, its checksums, and all its platform checks when it builds one.</summary>
/// <param name="image">The image.</param>
/// <param name="log">Receives the findings.</param>
public sealed class ImageExamination(OpenedImage image, FindingLog log)
{
    private static readonly HeaderMender Mender = new(ImmutableHashSet<string>.Empty);

    /// <summary>Runs every check.</summary>
    public void Run()
    {
        var file = new FindingLog();
        image.Found.Platform.CheckFile(image.Bytes.Span, new SourcePlace(image.File), file);
        log.AddAll(file.ToSorted());

        CheckSurroundings(file.ToSorted());
        var sizesAreLegal = true;
        foreach (var rule in image.Cart.Layout.Regions)
        {
            sizesAreLegal &= image.Cart.Rom[rule.Name] is not { } region || CheckSize(rule, region);
        }

        // The platform's checks rely on a region that can be one, and on its headers being there.
        var own = new FindingLog();
        if (sizesAreLegal && image.Cart.Headers.Length == image.Cart.Layout.Headers.Count(table => table.Region is null || image.Cart.Rom[table.Region] is not null))
        {
            image.Found.Platform.Check(image.Cart, own);
        }

        var findings = own.ToSorted();
        log.AddAll(findings);

        CheckHeaders(findings);
    }

    private void CheckHeaders(ImmutableArray<Finding> said)
    {
        var context = image.Context(name => image.Cart.Rom[name]?.Bytes ?? default);
        foreach (var header in image.Cart.Headers.Where(header => header.Table.IsOther?.Invoke(image.Raw(header)) != true))
        {
            CheckFields(header, context, said);
            foreach (var entry in header.Checksums.Where(entry => !entry.Right && !IsSaid(said, entry.Row.Name)))
            {
                log.Add(entry.Row.Enforced ? InspectionFindings.RefusedChecksum : entry.Row.Unread ? InspectionFindings.UnreadChecksum : InspectionFindings.WrongChecksum,
                    image.Cart.Place(entry.Row.Name), Told(entry));
            }
        }
    }

    private void CheckFields(HeaderImage header, HeaderContext context, ImmutableArray<Finding> said)
    {
        var start = header.Entries[0].Offset - header.Entries[0].Field.Offset;
        var fill = header.Table.Region is { } region ? image.Cart.Rom[region]!.Fill : (byte)0;
        // Values with a known repair are told by the platform's own checks.
        var worked = header.Table.Fields.Where(static field => field.Repair is null).Select(static field => field.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var change in Mender.MendFields(header.Table, start, image.Raw(header).ToArray(), fill, context).Where(change => worked.Contains(change.Name) && !IsSaid(said, change.Name)))
        {
            log.Add(InspectionFindings.FieldNotRight, image.Cart.Place(change.Name), $"`{change.Name}` is `{change.Was}`, and the image makes it `{change.Is}`.");
        }
    }

    private bool IsSaid(ImmutableArray<Finding> said, string name) => said.Any(finding => finding.Place == image.Cart.Place(name));

    private static string Told(ChecksumEntry entry)
    {
        var (stored, computed) = (entry.Row.Format(entry.Stored), entry.Row.Format(entry.Computed));
        return entry.IsUnset ? $"`{entry.Row.Name}` was never filled in: it is {stored}, and its rule gives {computed}." : $"`{entry.Row.Name}` is {stored}, and its rule gives {computed}.";
    }

    private void CheckSurroundings(ImmutableArray<Finding> said)
    {
        var first = image.Parts.Min(static part => part.Start);
        if (first > 0)
        {
            log.Add(InspectionFindings.Prefix, SourcePlace.At(image.File, 0), $"The image begins behind {ByteSize.Describe(first)} that are not part of it.");
        }

        if (image.Found.Claim.Order is not ImageOrder.Console and var order)
        {
            log.Add(InspectionFindings.OtherOrder, new SourcePlace(image.File), $"Its bytes are in the order `{ManifestWords.Word(order)}`; everything below is said of the console's order.");
        }

        var end = image.Parts.Max(static part => part.End);
        if (end < image.Bytes.Length && !said.Any(finding => finding.Place.Offset == end))
        {
            log.Add(InspectionFindings.Trailing, SourcePlace.At(image.File, end), $"{ByteSize.Describe(image.Bytes.Length - end)} lie behind the image.");
        }
    }

    private bool CheckSize(RegionRule rule, RegionImage region)
    {
        var next = rule.Sizes.Fit(region.Length);
        if (next != region.Length && !rule.Sizes.Customary.Contains(region.Length))
        {
            var changed = next is { } size && !rule.Sizes.Allows(region.Length) && rule.Align == RegionAlign.Start ? ChangedByFill(region, (int)size) : null;
            log.Add(changed is null ? InspectionFindings.OddSize : InspectionFindings.FillChangesChecksum, new SourcePlace(image.File),
                $"The region `{rule.Name}` has {ByteSize.Describe(region.Length)}.{changed}",
                next is null ? rule.Sizes.Words : $"{rule.Sizes.Words}; the next one is {ByteSize.Words(next.Value)}");
        }

        return rule.Sizes.Allows(region.Length);
    }

    private string? ChangedByFill(RegionImage region, int size)
    {
        var filled = new byte[size];
        filled.AsSpan().Fill(region.Fill);
        region.Bytes.CopyTo(filled);
        var changed = image.Cart.Headers.Where(header => header.Table.Region == region.Name).SelectMany(static header => header.Checksums)
            .Select(entry => (entry, Value: entry.Row.Compute(filled)))
            .FirstOrDefault(row => row.Value != row.entry.Computed);
        return changed.entry is { } found ? $" Filled up with {Number.Hex(region.Fill, 2)}, its `{found.Row.Name}` becomes {found.Row.Format(changed.Value)}." : null;
    }
}
