using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Platforms;

/// <summary>Finds the options that lead to the layout of an existing image.</summary>
public static class LayoutChoice
{
    /// <summary>The settings of the options under which the platform has the variant a claim names, with containers as long as its prefix where there is such a one; none stated when no layout fits.</summary>
    /// <param name="platform">The platform.</param>
    /// <param name="claim">What it says of the image.</param>
    public static HeaderSettings For(Platform platform, RecognitionClaim claim)
    {
        var usual = platform.Layout(HeaderSettings.None).Variant;
        var fitting = Combinations(platform.Options, HeaderSettings.None)
            .Select(settings => (Settings: settings, Layout: platform.Layout(settings)))
            .Where(row => row.Layout.Variant == (claim.Variant ?? usual))
            .ToList();
        var (found, _) = fitting.Find(row => Containers(row.Layout) == claim.PrefixLength);
        return found ?? fitting.FirstOrDefault().Settings ?? HeaderSettings.None;
    }

    private static int Containers(PlatformLayout layout) => layout.Headers.Sum(static header => header.Region is null ? header.Length : 0);

    private static IEnumerable<HeaderSettings> Combinations(ImmutableArray<PlatformOption> options, HeaderSettings settings) =>
        options.IsEmpty
            ? [settings]
            : Combinations(options[1..], settings).SelectMany(rest => options[0].Values.Select(word => With(rest, options[0], word.Name)));

    private static HeaderSettings With(HeaderSettings settings, PlatformOption option, string word) =>
        word == option.Default && !option.Required ? settings : settings with { Values = settings.Values.SetItem(option.Name, new ManifestValue(word, SourcePlace.None)) };
}
