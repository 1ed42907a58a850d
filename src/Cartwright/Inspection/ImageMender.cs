using System.Collections.Immutable;
using Cartwright.Headers;
using Cartwright.Ordering;
using Cartwright.Platforms;

namespace Cartwright.Inspection;

/// <summary>Puts right the size codes, fixed marks and checksums of an existing image. Everything else, and the file's order and length, stay as they are.</summary>
public static class ImageMender
{
    /// <summary>Mends an image in memory.</summary>
    /// <param name="image">The image; not changed.</param>
    /// <param name="also">Names of checksums and fields that are put right even where the value may be meant.</param>
    public static MendedImage Mend(OpenedImage image, IReadOnlySet<string> also)
    {
        var regions = image.Cart.Rom.Regions.ToDictionary(static region => region.Name, static region => region.Bytes.ToArray(), StringComparer.Ordinal);
        var context = image.Context(name => regions.GetValueOrDefault(name));
        var file = image.Bytes.ToArray();
        var containers = new Queue<ImagePart>(image.Parts.Where(static part => part.Region is null));
        var mender = new HeaderMender(also);
        var changes = ImmutableArray.CreateBuilder<HeaderChange>();
        foreach (var table in image.Cart.Headers.Select(static header => header.Table))
        {
            var bytes = table.Region is { } name ? regions[name]
                : containers.TryDequeue(out var part) ? file.AsSpan(part.Start, part.Length)
                : [];
            changes.AddRange(mender.Mend(table, bytes, image.Cart.Rom[table.Region ?? ""]?.Fill ?? 0, context));
        }

        if (changes.Any(static change => change.Left is null))
        {
            PutBack(image, regions, file);
        }

        return new MendedImage(file, changes.ToImmutable());
    }

    private static void PutBack(OpenedImage image, Dictionary<string, byte[]> regions, byte[] file)
    {
        foreach (var part in image.Parts.Where(static part => part.Region is not null))
        {
            var bytes = regions[part.Region!].AsSpan(part.Offset, part.Length);
            var whole = part.Length - (part.Length % ImageOrders.Unit(image.Found.Claim.Order));
            ImageOrders.FromConsole(image.Found.Claim.Order, bytes[..whole], file.AsSpan(part.Start, whole));
            bytes[whole..].CopyTo(file.AsSpan(part.Start + whole));
        }
    }
}
