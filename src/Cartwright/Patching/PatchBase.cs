using System.Collections.Immutable;
using Cartwright.Ordering;

namespace Cartwright.Patching;

/// <summary>Helps when an image is not the base of a patch: it may be that base with a prefix, or in another byte order.</summary>
public static class PatchBase
{
    // The orders that are no exchange of their own have two directions.
    private static readonly ImmutableArray<(ImageOrder From, ImageOrder To)> Orders =
    [
        (ImageOrder.Console, ImageOrder.Console),
        .. Enum.GetValues<ImageOrder>().Where(static order => order != ImageOrder.Console).Select(static order => (order, ImageOrder.Console)),
        .. Enum.GetValues<ImageOrder>().Where(static order => order >= ImageOrder.OddEvenBlocks).Select(static order => (ImageOrder.Console, order)),
    ];

    /// <summary>Tries the image as it is and without each prefix, in every order whose unit its length is a multiple of.</summary>
    /// <param name="image">The image.</param>
    /// <param name="statement">What the patch states; without a CRC-32 of its base nothing can be tried.</param>
    /// <param name="prefixLengths">Lengths of prefixes, in bytes; the image without a prefix is always tried first.</param>
    /// <returns>What was tried, in order; it ends with the first that fits.</returns>
    public static ImmutableArray<PatchBaseTry> Try(ReadOnlySpan<byte> image, PatchStatement statement, ReadOnlySpan<int> prefixLengths)
    {
        var tried = ImmutableArray.CreateBuilder<PatchBaseTry>();
        if (statement.BaseCrc is { } crc && !TryOrders(image, 0, statement.BaseSize, crc, tried))
        {
            foreach (var length in prefixLengths)
            {
                if (length > 0 && length <= image.Length && TryOrders(image, length, statement.BaseSize, crc, tried)) break;
            }
        }

        return tried.ToImmutable();
    }

    /// <summary>Brings the image into the form of a try.</summary>
    /// <param name="image">The image that was tried.</param>
    /// <param name="way">How.</param>
    public static byte[] Bring(ReadOnlySpan<byte> image, PatchBaseTry way)
    {
        var result = new byte[image.Length - way.PrefixLength];
        Bring(image[way.PrefixLength..], way.From, way.To, result);
        return result;
    }

    // A length that is not the base's needs no byte looked at.
    private static bool TryOrders(ReadOnlySpan<byte> image, int prefixLength, long? size, uint crc, ImmutableArray<PatchBaseTry>.Builder tried)
    {
        var body = image[prefixLength..];
        var brought = body.Length == (size ?? body.Length) ? new byte[body.Length] : [];
        foreach (var (from, to) in Orders)
        {
            if (body.Length % Math.Max(ImageOrders.Unit(from), ImageOrders.Unit(to)) != 0) continue;
            var fits = body.Length == brought.Length;
            if (fits)
            {
                Bring(body, from, to, brought);
                fits = Patch.Crc(brought) == crc;
            }

            tried.Add(new PatchBaseTry(prefixLength, from, to, fits));
            if (fits) return true;
        }

        return false;
    }

    private static void Bring(ReadOnlySpan<byte> body, ImageOrder from, ImageOrder to, Span<byte> result)
    {
        if (from == ImageOrder.Console) ImageOrders.FromConsole(to, body, result);
        else ImageOrders.ToConsole(from, body, result);
    }
}
