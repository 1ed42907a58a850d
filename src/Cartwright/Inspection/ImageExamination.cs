using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Inspection;

/// <summary>Says what is wrong with an existing image: its place in the file, its sizes, its checksums, and all its platform checks when it builds one.</summary>
/// <param name="image">The image.</param>
/// <param name="log">Receives the findings.</param>
public sealed class ImageExamination(OpenedImage image, FindingLog log)
{
    /// <summary>Runs every check.</summary>
    public void Run()
    {
        CheckSurroundings();
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
        foreach (var finding in findings)
        {
            log.Add(finding);
        }

        foreach (var entry in image.Cart.Headers.SelectMany(static header => header.Checksums).Where(entry => !entry.Right && !findings.Any(finding => finding.Place == image.Cart.Place(entry.Row.Name))))
        {
            log.Add(entry.Row.Enforced ? InspectionFindings.RefusedChecksum : InspectionFindings.WrongChecksum, image.Cart.Place(entry.Row.Name),
                $"`{entry.Row.Name}` is {entry.Row.Format(entry.Stored)}, and its rule gives {entry.Row.Format(entry.Computed)}.");
        }
    }

    private void CheckSurroundings()
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
        if (end < image.Bytes.Length)
        {
            log.Add(InspectionFindings.Trailing, SourcePlace.At(image.File, end), $"{ByteSize.Describe(image.Bytes.Length - end)} lie behind the image.");
        }
    }

    private bool CheckSize(RegionRule rule, RegionImage region)
    {
        if (!rule.Sizes.Customary.Contains(region.Length))
        {
            var next = rule.Sizes.Fit(region.Length);
            log.Add(InspectionFindings.OddSize, new SourcePlace(image.File), $"The region `{rule.Name}` has {ByteSize.Describe(region.Length)}.",
                next is null ? rule.Sizes.Words : $"{rule.Sizes.Words}; the next one is {ByteSize.Words(next.Value)}");
        }

        return rule.Sizes.Allows(region.Length);
    }
}
