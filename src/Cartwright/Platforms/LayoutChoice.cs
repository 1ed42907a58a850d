using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Platforms;

/// <summary>Finds the options that lead to the layout of an existing image.</summary>
public static class LayoutChoice
{
    /// <summary>The settings of the options under which the platform has the variant a claim names, or, where it names none, the first that the image's length is legal for; with containers as long as its prefix where there is such a layout.</summary>
    /// <param name="platform">The platform.</param>
    /// <param name="claim">What it says of the image.</param>
    /// <param name="length">Bytes of the file.</param>
    /// <returns>No option stated when no layout fits.</returns>
    public static HeaderSettings For(Platform platform, RecognitionClaim claim, int length)
    {
        var usual = platform.Layout(HeaderSettings.None);
        var all = Combinations(platform.Options, HeaderSettings.None).Select(settings => (Settings: settings, Layout: platform.Layout(settings))).ToList();
        var variant = claim.Variant ?? (Allows(usual) ? null : all.Find(row => Allows(row.Layout)).Layout?.Variant) ?? usual.Variant;
        var fitting = all.FindAll(row => row.Layout.Variant == variant);
        var (found, _) = fitting.Find(row => Containers(row.Layout) == claim.PrefixLength);
        return found ?? fitting.FirstOrDefault().Settings ?? HeaderSettings.None;

        bool Allows(PlatformLayout layout) => layout.Regions[0].Sizes.Allows(length - claim.PrefixLength);
    }

    private static int Containers(PlatformLayout layout) => layout.Headers.Sum(static header => header.Region is null ? header.Length : 0);

    private static IEnumerable<HeaderSettings> Combinations(ImmutableArray<PlatformOption> options, HeaderSettings settings) =>
        options.IsEmpty
            ? [settings]
            : Combinations(options[1..], settings).SelectMany(rest => options[0].Values.Select(word => With(rest, options[0], word.Name)));

    private static HeaderSettings With(HeaderSettings settings, PlatformOption option, string word) =>
        word == option.Default && !option.Required ? settings : settings with { Values = settings.Values.SetItem(option.Name, new ManifestValue(word, SourcePlace.None)) };
}
