using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Roms;

namespace Cartwright.Platforms;

/// <summary>From placed programs to a finished ROM: regions, headers, checksums, and the platform's own checks.</summary>
public static class RomAssembler
{
    /// <summary>Checks that the platform has every field, word and region the request names.</summary>
    /// <param name="platform">The platform.</param>
    /// <param name="layout">Its layout for the request's header settings.</param>
    /// <param name="request">What the ROM is to be made of.</param>
    /// <param name="log">Receives everything that is wrong.</param>
    public static void CheckSettings(Platform platform, PlatformLayout layout, RomRequest request, FindingLog log)
    {
        CheckKeys(platform, layout, request.Header, request.Place("header"), log);
        CheckRegions(layout, request, log);
    }

    /// <summary>Assembles a ROM from a request whose settings are checked.</summary>
    /// <param name="platform">The platform.</param>
    /// <param name="layout">Its layout for the request's header settings.</param>
    /// <param name="request">What it is made of.</param>
    /// <param name="log">Receives everything that is wrong.</param>
    /// <returns>Null when a region or a header could not be made.</returns>
    public static CartView? Assemble(Platform platform, PlatformLayout layout, RomRequest request, FindingLog log)
    {
        if (!CheckPrograms(platform, request, log))
        {
            return null;
        }

        layout = platform.Settle(layout, request.Segments);
        if (Lay(layout, request, log) is not { } rom)
        {
            return null;
        }

        var context = new HeaderContext(request.Title, request.Revision, rom.LengthOf) { RegionBytes = name => rom[name]?.Bytes ?? default };
        var writer = new HeaderWriter(request.Header, context, request.Place("header"), log);
        // The header of a region the cart does without is not there either.
        var tables = layout.Headers.Where(table => table.Region is not { } name || rom[name] is not null).ToList();
        var headers = tables
            .Select(table => writer.Write(table, table.Region is { } name ? rom[name] : null))
            .OfType<HeaderImage>()
            .ToImmutableArray();
        if (headers.Length != tables.Count)
        {
            return null;
        }

        var cart = new CartView(layout, rom, headers, request.Place);
        platform.Check(cart, log);
        return cart;
    }

    /// <summary>Lays finished images into regions of their own: no header is written over theirs, and any power of two is a size.</summary>
    /// <param name="layout">The layout of the platform.</param>
    /// <param name="request">What it is made of.</param>
    /// <param name="log">Receives everything that is wrong.</param>
    /// <returns>Null when a region could not be made.</returns>
    public static CartView? AssembleFinished(PlatformLayout layout, RomRequest request, FindingLog log)
    {
        var plain = layout with { Headers = [], Regions = [.. layout.Regions.Select(static rule => rule with { Sizes = SizeRule.PowersOfTwo(1, ByteSize.LargestMemory), Align = RegionAlign.Start })] };
        return Lay(plain, request, log) is { } rom ? new CartView(plain, rom, [], request.Place) : null;
    }

    private static Rom? Lay(PlatformLayout layout, RomRequest request, FindingLog log)
    {
        var regions = layout.Regions
            .Select(rule => RegionBuilder.Build(rule, request.Regions.GetValueOrDefault(rule.Name), InRegion(request, rule), request.Place("programs"), log))
            .OfType<RegionImage>()
            .ToImmutableArray();
        return layout.Regions.Any(rule => (rule.Required || InRegion(request, rule).Any()) && !regions.Any(region => region.Name == rule.Name)) ? null : new Rom(regions);
    }

    // Where the programs' bytes are shifted or foreign, all that follows would be noise.
    private static bool CheckPrograms(Platform platform, RomRequest request, FindingLog log)
    {
        var own = new FindingLog();
        platform.CheckPrograms(request.Segments, own);
        log.AddAll(own.ToSorted());

        return !own.HasErrors;
    }

    private static IEnumerable<PlacedSegment> InRegion(RomRequest request, RegionRule rule) =>
        request.Segments.Where(segment => string.Equals(segment.Region, rule.Name, StringComparison.OrdinalIgnoreCase));

    private static void CheckKeys(Platform platform, PlatformLayout layout, HeaderSettings settings, SourcePlace place, FindingLog log)
    {
        var checksums = layout.Headers.SelectMany(static table => table.Checksums).Select(static row => row.Name);
        var fields = layout.Headers.SelectMany(static table => table.Fields).Select(static field => field.Name).Concat(checksums).ToList();
        var known = platform.Options.Select(static option => option.Name).Concat(fields).ToList();
        foreach (var option in platform.Options.Where(option => option.Required && settings[option.Name] is null))
        {
            log.Add(HeaderFindings.MissingField, place with { Key = "header:" + option.Name }, $"The header has no `{option.Name}`: {option.Meaning}", $"one of {string.Join(", ", option.Values.Select(static value => value.Name))}");
        }

        foreach (var (name, value) in settings.Values)
        {
            if (platform.Options.FirstOrDefault(option => Same(option.Name, name)) is { } option)
            {
                CheckWord(option, value, log);
            }
            else
            {
                CheckName(name, value.Place, known, log);
            }
        }

        foreach (var kept in settings.Keep.Fields)
        {
            CheckName(kept.Text, kept.Place, fields, log);
        }
    }

    private static void CheckName(string name, SourcePlace place, List<string> known, FindingLog log)
    {
        if (!known.Exists(field => Same(field, name)))
        {
            log.Add(HeaderFindings.UnknownField, place, $"The header has no field `{name}`.", $"one of {string.Join(", ", known.Distinct())}", NearestName.Question(name, known));
        }
    }

    private static void CheckWord(PlatformOption option, ManifestValue value, FindingLog log)
    {
        var words = option.Values.Select(static row => row.Name).ToList();
        if (!words.Contains(value.Text, StringComparer.OrdinalIgnoreCase))
        {
            log.Add(HeaderFindings.BadValue, value.Place, $"`{value.Text}` is not a value `{option.Name}` can have.", $"one of {string.Join(", ", words)}", NearestName.Question(value.Text, words));
        }
    }

    private static void CheckRegions(PlatformLayout layout, RomRequest request, FindingLog log)
    {
        var names = layout.Regions.Select(static rule => rule.Name).ToList();
        foreach (var (name, settings) in request.Regions)
        {
            if (!names.Contains(name, StringComparer.OrdinalIgnoreCase))
            {
                log.Add(RomFindings.BadRegion, settings.Place, $"This platform has no region `{name}`.", $"one of {string.Join(", ", names)}", NearestName.Question(name, names));
            }
        }
    }

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
