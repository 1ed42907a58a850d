using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Ordering;
using Cartwright.Roms;

namespace Cartwright.Inspection;

/// <summary>Gives an existing image the length a chip asks for.</summary>
/// <param name="opener">Reads the image again.</param>
/// <param name="strip">True to take off bytes in front that are not part of it.</param>
/// <param name="fillUp">True to lengthen it to the next legal size.</param>
public sealed class ImageFitter(ImageOpener opener, bool strip, bool fillUp)
{
    /// <summary>Fits an image.</summary>
    /// <param name="image">The image; not changed.</param>
    /// <param name="log">Receives what stands against it.</param>
    /// <returns>The image as it was where its length is right; null when it cannot be fitted.</returns>
    public FittedImage? Fit(OpenedImage image, FindingLog log)
    {
        var stripped = strip ? image.Parts.Min(static part => part.Start) : 0;
        var bare = stripped > 0 ? opener.Open(image.File, image.Bytes[stripped..], image.Found.Platform, log) : image;
        if (bare is null || !fillUp)
        {
            return bare is null ? null : new FittedImage(bare, stripped, 0);
        }

        var added = Missing(bare, log);
        var whole = added > 0 ? opener.Open(image.File, Lengthened(bare, added), image.Found.Platform, log) : bare;
        return log.HasErrors || whole is null ? null : new FittedImage(whole, stripped, added);
    }

    private static int Missing(OpenedImage image, FindingLog log)
    {
        var rule = image.Cart.Layout.Regions.FirstOrDefault(rule => image.Cart.Rom[rule.Name] is { } region && !rule.Sizes.Allows(region.Length));
        if (rule is null)
        {
            return 0;
        }

        var length = image.Cart.Rom.LengthOf(rule.Name);
        var missing = (rule.Sizes.Fit(length) ?? 0) - length;
        if (missing < 0 || image.Parts is not [{ Region: not null, Start: 0 }] || image.Found.Claim.Order != ImageOrder.Console)
        {
            log.Add(InspectionFindings.NotFilledUp, new SourcePlace(image.File),
                missing < 0 ? $"The region `{rule.Name}` has {ByteSize.Describe(length)}, more than any legal size." : "Only an image of one region, with nothing in front of it and in the console's order, can be filled up.", rule.Sizes.Words);
        }

        return (int)Math.Max(0, missing);
    }

    private static byte[] Lengthened(OpenedImage image, int added)
    {
        var rule = image.Cart.Layout.Regions[0];
        var bytes = new byte[image.Bytes.Length + added];
        bytes.AsSpan().Fill(rule.Fill);
        image.Bytes.CopyTo(bytes.AsMemory(rule.Align == RegionAlign.End ? added : 0));
        return bytes;
    }
}
