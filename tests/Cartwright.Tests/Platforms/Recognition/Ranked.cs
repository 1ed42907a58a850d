using System.Collections.Immutable;
using Cartwright.Ordering;
using Cartwright.Platforms;
using Xunit;

namespace Cartwright.Tests.Platforms.Recognition;

/// <summary>Claims on files, each looked at for whether somebody could act on it.</summary>
internal static class Ranked
{
    private static readonly Recogniser Recogniser = new(PlatformCatalog.BuiltIn);

    /// <summary>All claims on a file.</summary>
    public static ImmutableArray<RecognisedPlatform> Of(ReadOnlySpan<byte> file)
    {
        var ranked = Recogniser.Rank(file);
        foreach (var row in ranked)
            AssertUsable(row, file.Length);

        return ranked;
    }

    /// <summary>The claim of the one platform that is decided on; fails when there is none, or another.</summary>
    public static RecognitionClaim Decided(string platform, ReadOnlySpan<byte> file)
    {
        var best = Recogniser.Decide(Of(file));
        Assert.Equal(platform, best?.Platform.Facts.Id);
        return best!.Claim;
    }

    /// <summary>The claim of one platform, whatever others say; null when it has none.</summary>
    public static RecognitionClaim? By(string platform, ReadOnlySpan<byte> file) => Of(file).FirstOrDefault(row => row.Platform.Facts.Id == platform)?.Claim;

    /// <summary>Fails when any platform is sure of a file.</summary>
    public static void AssertUnsure(ReadOnlySpan<byte> file, string name) =>
        Assert.Empty(Of(file).Where(row => row.Claim.Certainty > Certainty.Candidate).Select(row => $"{name}: {row.Platform.Facts.Id}: {row.Claim.Reason}"));

    /// <summary>A file in another order, behind some bytes.</summary>
    public static byte[] Arranged(ReadOnlySpan<byte> image, ImageOrder order, params ReadOnlySpan<byte> prefix)
    {
        var file = new byte[prefix.Length + image.Length];
        prefix.CopyTo(file);
        ImageOrders.FromConsole(order, image, file.AsSpan(prefix.Length));
        return file;
    }

    private static void AssertUsable(RecognisedPlatform row, int length)
    {
        var claim = row.Claim;
        Assert.InRange(claim.PrefixLength, 0, length);
        Assert.True(claim.Variant is null || row.Platform.Layouts.Any(layout => layout.Variant == claim.Variant), $"{row.Platform.Facts.Id} has no layout {claim.Variant}");
        Assert.False(string.IsNullOrWhiteSpace(claim.Reason) || claim.Reason.EndsWith('.') || claim.Reason.Contains('\n', StringComparison.Ordinal), claim.Reason);
        // A byte or three too many can be cut off; whole blocks cannot.
        Assert.True(ImageOrders.Unit(claim.Order) <= 4 || (length - claim.PrefixLength) % ImageOrders.Unit(claim.Order) == 0, $"{claim.Order} of {length} bytes");
    }
}
