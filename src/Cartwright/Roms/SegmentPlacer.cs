using System.Collections.Immutable;
using System.Globalization;
using Cartwright.Findings;
using Cartwright.Manifests;
using Cartwright.Programs;

namespace Cartwright.Roms;

/// <summary>Finds the place in the ROM of everything a program file holds.</summary>
/// <param name="regions">The platform's regions.</param>
/// <param name="places">The platform's places with a name.</param>
/// <param name="addresses">The console's addresses.</param>
/// <param name="statedSize">Size in bytes the manifest states for a region; null where it says <c>fit</c>.</param>
/// <param name="log">Receives what is wrong.</param>
public sealed class SegmentPlacer(ImmutableArray<RegionRule> regions, ImmutableArray<NamedPlace> places, AddressMap addresses, Func<string, long?> statedSize, FindingLog log)
{
    /// <summary>Places a program.</summary>
    /// <param name="entry">What the manifest says of it.</param>
    /// <param name="program">What the file holds.</param>
    public ImmutableArray<PlacedSegment> Place(ProgramEntry entry, ProgramFile program)
    {
        if (entry.As is { } name)
        {
            return PlaceByName(entry, program, name);
        }

        if (Region(entry) is not { } region || (!program.HasAddresses && !HasPlace(entry)))
        {
            return [];
        }

        if (entry.Offset is { } offset)
        {
            return PlaceByOffset(entry, program, region, offset);
        }

        var start = default(ConsoleAddress);
        if (entry.Address is { } address && !ConsoleAddress.TryParse(address.Text, out start))
        {
            log.Add(RomFindings.BadAddress, address.Place, $"`{address.Text}` is no address.", addresses.Forms);
            return [];
        }

        return [.. program.Segments.SelectMany(segment => PlaceByAddress(entry, program, segment, start, region))];
    }

    private bool HasPlace(ProgramEntry entry)
    {
        var stated = entry.Offset is not null || entry.Address is not null;
        if (!stated)
        {
            log.Add(RomFindings.NoPlace, entry.Place, $"{entry.ShownName} is a raw binary, and nothing says where its bytes go.",
                $"`offset` (for example \"0\") or `address` ({addresses.Forms})");
        }

        return stated;
    }

    // The stated region; the only one; empty when the address decides; null when the choice is open or wrong.
    private string? Region(ProgramEntry entry)
    {
        var names = regions.Select(static rule => rule.Name).ToList();
        if (entry.Region is { } stated)
        {
            var known = names.Find(name => string.Equals(name, stated.Text, StringComparison.OrdinalIgnoreCase));
            if (known is null)
            {
                log.Add(RomFindings.BadRegion, stated.Place, $"This platform has no region `{stated.Text}`.", $"one of {string.Join(", ", names)}", NearestName.Question(stated.Text, names));
            }

            return known;
        }

        if (names.Count == 1 || entry.Offset is null)
        {
            return names.Count == 1 ? names[0] : "";
        }

        log.Add(RomFindings.BadRegion, entry.Place, $"{entry.ShownName} has an `offset` but no `region`.", $"one of {string.Join(", ", names)}");
        return null;
    }

    private ImmutableArray<PlacedSegment> PlaceByName(ProgramEntry entry, ProgramFile program, ManifestValue name)
    {
        var names = places.Select(static known => known.Name).ToList();
        if (places.FirstOrDefault(known => string.Equals(known.Name, name.Text, StringComparison.OrdinalIgnoreCase)) is not { } place)
        {
            log.Add(RomFindings.BadAddress, name.Place, $"This platform has no place called `{name.Text}`.",
                names.Count == 0 ? "`offset` or `address`" : $"one of {string.Join(", ", names)}", NearestName.Question(name.Text, names));
            return [];
        }

        var length = program.Segments.Select(static segment => segment.End).DefaultIfEmpty().Max();
        if (length > place.Length)
        {
            log.Add(RomFindings.TooLarge, name.Place, $"{entry.ShownName} has {ByteSize.Describe(length)}, and the place `{place.Name}` holds {ByteSize.Describe(place.Length)}.");
            return [];
        }

        return Shift(entry, program, place.Region, place.Offset);
    }

    private static ImmutableArray<PlacedSegment> Shift(ProgramEntry entry, ProgramFile program, string region, long start) =>
        [.. program.Segments.Select(segment => new PlacedSegment(region, start + segment.Address, segment.Bytes, entry.ShownName, segment.Place))];

    private ImmutableArray<PlacedSegment> PlaceByOffset(ProgramEntry entry, ProgramFile program, string region, ManifestValue offset)
    {
        if (!ByteSize.TryParse(offset.Text, out var start))
        {
            log.Add(RomFindings.BadAddress, offset.Place, $"`{offset.Text}` is no offset.", "a number of bytes such as 0x8000, $8000 or 32KiB");
            return [];
        }

        return Shift(entry, program, region, start);
    }

    private IEnumerable<PlacedSegment> PlaceByAddress(ProgramEntry entry, ProgramFile program, Segment segment, ConsoleAddress start, string region)
    {
        for (var done = 0; done < segment.Length;)
        {
            var inFile = segment.Address + done;
            var address = start with { Address = start.Address + (inFile / addresses.Unit) };
            var place = inFile % addresses.Unit == 0
                ? addresses.Locate(address, statedSize)
                : AddressPlace.Nowhere(string.Create(CultureInfo.InvariantCulture, $"byte ${inFile:X4} of the file is inside a word of {addresses.Unit} bytes"));
            if (place.Region is null || (region.Length > 0 && place.Region != region))
            {
                Refuse(entry, segment, address, place, region);
                yield break;
            }

            // A raw binary is one block from its address on; the addresses of other files are all the file's own.
            var run = program.HasAddresses ? (int)Math.Min(place.Run, segment.Length - done) : segment.Length;
            yield return new PlacedSegment(place.Region, place.Offset, segment.Bytes.Slice(done, run), entry.ShownName, segment.Place);
            done += run;
        }
    }

    private void Refuse(ProgramEntry entry, Segment segment, ConsoleAddress address, AddressPlace place, string region)
    {
        var where = entry.Address?.Place ?? segment.Place;
        var why = place.Problem ?? $"it lies in the region `{place.Region}`, not in `{region}`";
        log.Add(RomFindings.NotInRom, where, $"{entry.ShownName}: the address {address} is not in the ROM: {why}.", addresses.Forms);
    }
}
