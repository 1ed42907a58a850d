using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Headers;
using Cartwright.Manifests;
using Cartwright.Platforms;
using Cartwright.Roms;

namespace Cartwright.Inspection;

/// <summary>Finds programs and header values that build an existing image again, byte for byte.</summary>
/// <param name="image">The image.</param>
public sealed class ImageAdopter(OpenedImage image)
{
    private readonly SortedSet<string> _kept = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Adopts the image.</summary>
    /// <param name="log">Receives what stands against it.</param>
    /// <returns>Null when no manifest gives the same bytes.</returns>
    public AdoptedCart? Adopt(FindingLog log)
    {
        foreach (var entry in image.Cart.Headers.SelectMany(static header => header.Checksums).Where(static entry => !entry.Right))
        {
            _kept.Add(entry.Row.Name);
        }

        var before = -1;
        var trial = new FindingLog();
        while (before < _kept.Count)
        {
            before = _kept.Count;
            trial = new FindingLog();
            var programs = Programs();
            var cart = Try(programs, All(), trial);
            if (cart is not null && !trial.HasErrors && image.IsSameAs(cart))
            {
                return new AdoptedCart(programs, Needed(programs), [.. _kept]) { RomLength = image.IsShort ? image.Cart.Rom.Regions[0].Length : null };
            }

            KeepWhatFailed(trial);
            KeepWhatDiffers(cart);
        }

        foreach (var finding in trial.ToSorted().Where(static finding => finding.Severity == FindingSeverity.Error))
        {
            log.Add(finding with { Place = new SourcePlace(image.File) });
        }

        log.Add(InspectionFindings.NotAdopted, new SourcePlace(image.File), "No manifest was found that builds this image again byte for byte.");
        return null;
    }

    private IEnumerable<HeaderEntry> Entries => image.Cart.Headers.SelectMany(static header => header.Entries);

    private ImmutableSortedDictionary<string, ManifestValue> All() =>
        image.Options.Values.SetItems(Entries.Where(entry => !_kept.Contains(entry.Field.Name)).Select(Stated));

    private static KeyValuePair<string, ManifestValue> Stated(HeaderEntry entry) => new(entry.Field.Name, new ManifestValue(entry.Text, Key(entry.Field.Name)));

    private static SourcePlace Key(string name) => new(null, Key: "header:" + name);

    // What a build finds by itself need not be stated.
    private ImmutableSortedDictionary<string, ManifestValue> Needed(ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> programs)
    {
        var values = All();
        foreach (var entry in Entries)
        {
            var without = values.Remove(entry.Field.Name);
            var log = new FindingLog();
            if (without.Count < values.Count && Try(programs, without, log) is { } cart && !log.HasErrors && image.IsSameAs(cart))
            {
                values = without;
            }
        }

        return values;
    }

    private ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Programs()
    {
        var programs = ImmutableSortedDictionary.CreateBuilder<string, ReadOnlyMemory<byte>>(StringComparer.OrdinalIgnoreCase);
        foreach (var region in image.Cart.Rom.Regions)
        {
            var bytes = region.Bytes.ToArray();
            foreach (var header in image.Cart.Headers.Where(header => header.Table.Region == region.Name))
            {
                HeaderEraser.TakeOut(header, bytes, _kept);
            }

            programs[region.Name] = bytes;
        }

        return programs.ToImmutable();
    }

    private CartView? Try(ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> programs, ImmutableSortedDictionary<string, ManifestValue> values, FindingLog log)
    {
        var platform = image.Found.Platform;
        var settings = new HeaderSettings(values, new HeaderKeep(null, [.. _kept.Select(static name => new ManifestValue(name, Key(name)))]));
        var request = new RomRequest([.. programs.Select(program => new PlacedSegment(program.Key, 0, program.Value, image.File, SourcePlace.None))], settings)
        {
            Regions = image.Cart.Rom.Regions.ToImmutableSortedDictionary(static region => region.Name, region => new RegionSettings(region.Name, SourcePlace.None, image.IsShort ? null : region.Length, SourcePlace.None, null), StringComparer.OrdinalIgnoreCase),
        };
        var layout = platform.Layout(settings);
        RomAssembler.CheckSettings(platform, layout, request, log);
        return log.HasErrors ? null : RomAssembler.Assemble(platform, layout, request, log);
    }

    // A checksum over fill that the image does not have.
    private void KeepWhatDiffers(CartView? cart)
    {
        var stored = image.Cart.Headers.SelectMany(static header => header.Checksums).ToDictionary(static entry => entry.Row.Name, static entry => entry.Stored, StringComparer.Ordinal);
        _kept.UnionWith(cart?.Headers.SelectMany(static header => header.Checksums).Where(entry => stored.TryGetValue(entry.Row.Name, out var own) && own != entry.Stored).Select(static entry => entry.Row.Name) ?? []);
    }

    // A field whose text is refused, or is not what the rest of the image makes it, keeps its bytes.
    private void KeepWhatFailed(FindingLog trial)
    {
        var inRegions = image.Cart.Headers.Where(static header => header.Table.Region is not null).SelectMany(static header => header.Entries).Select(static entry => entry.Field.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var finding in trial.ToSorted().Where(static finding => finding.Severity == FindingSeverity.Error))
        {
            if (finding.Place.Key is { } key && key.StartsWith("header:", StringComparison.Ordinal) && inRegions.Contains(key["header:".Length..]))
            {
                _kept.Add(key["header:".Length..]);
            }
        }
    }
}
