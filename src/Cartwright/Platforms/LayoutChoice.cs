using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Manifests;

namespace Cartwright.Platforms;

/// <summary>Finds the options that lead to a layout.</summary>
public static class LayoutChoice
{
    /// <summary>The settings of the options under which the platform has a layout of a variant; none stated when there is no such layout.</summary>
    /// <param name="platform">The platform.</param>
    /// <param name="variant">The variant; null for the usual layout.</param>
    public static HeaderSettings For(Platform platform, string? variant)
    {
        if (variant is null || platform.Layout(HeaderSettings.None).Variant == variant)
        {
            return HeaderSettings.None;
        }

        return Combinations(platform.Options, HeaderSettings.None).FirstOrDefault(settings => platform.Layout(settings).Variant == variant) ?? HeaderSettings.None;
    }

    private static IEnumerable<HeaderSettings> Combinations(ImmutableArray<PlatformOption> options, HeaderSettings settings) =>
        options.IsEmpty
            ? [settings]
            : Combinations(options[1..], settings).SelectMany(rest => options[0].Values.Select(word => With(rest, options[0], word.Name)));

    private static HeaderSettings With(HeaderSettings settings, PlatformOption option, string word) =>
        word == option.Default && !option.Required ? settings : settings with { Values = settings.Values.SetItem(option.Name, new ManifestValue(word, SourcePlace.None)) };
}
