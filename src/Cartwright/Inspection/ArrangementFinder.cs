using System.Collections.Immutable;
using Cartwright.Findings;
using Cartwright.Platforms;

namespace Cartwright.Inspection;

/// <summary>Finds how chips whose arrangement nobody knows make up an image.</summary>
/// <param name="opener">Reads images.</param>
/// <param name="named">The platform the user names; null for any.</param>
public sealed class ArrangementFinder(ImageOpener opener, Platform? named)
{
    /// <summary>Most chips that are tried in every order.</summary>
    public const int MostChips = 4;

    /// <summary>Finds the one way there is.</summary>
    /// <param name="names">The chips as the user named them.</param>
    /// <param name="chips">Their contents.</param>
    /// <param name="known">The image they should give, as the user named it, and its bytes; null when there is none.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Every way that fits; one of them is right when the log has no error.</returns>
    public ImmutableArray<FoundArrangement> Find(ImmutableArray<string> names, ImmutableArray<byte[]> chips, (string Name, ReadOnlyMemory<byte> Bytes)? known, FindingLog log)
    {
        if (chips.Length is 0 or > MostChips || chips.Any(static chip => chip.Length == 0))
        {
            log.Add(InspectionFindings.NoArrangement, new SourcePlace(names.FirstOrDefault()), $"There are {chips.Length} chips{(chips.Any(static chip => chip.Length == 0) ? ", one of them empty" : "")}.", $"1 to {MostChips} chips that hold something");
            return [];
        }

        var found = known is { } image ? Known(chips, image) : Recognised(chips);
        if (found.IsEmpty)
        {
            log.Add(InspectionFindings.NoArrangement, new SourcePlace(names[0]), known is { } asked ? $"In no way do these chips give {asked.Name}." : "In no way do these chips give an image that is known by a mark or a checksum.");
        }
        else if (found.Length > 1)
        {
            log.Add(InspectionFindings.SeveralArrangements, new SourcePlace(names[0]), $"{found.Length} different images come of these chips.");
        }

        return found;
    }

    // The image itself, and each region of it: a container or a prefix is on no chip.
    private ImmutableArray<FoundArrangement> Known(ImmutableArray<byte[]> chips, (string Name, ReadOnlyMemory<byte> Bytes) image)
    {
        var opened = opener.Open(image.Name, image.Bytes, named, new FindingLog());
        var targets = (opened?.Cart.Rom.Regions.Select(region => (Told: $"the region `{region.Name}` of {image.Name}", region.Bytes)) ?? []).Append((image.Name, image.Bytes));
        var search = new KnownArrangement(chips);
        foreach (var (told, bytes) in targets)
        {
            if (search.Find(bytes) is [var way, ..])
            {
                return [new FoundArrangement(way, bytes, told)];
            }
        }

        return [];
    }

    private ImmutableArray<FoundArrangement> Recognised(ImmutableArray<byte[]> chips) =>
    [
        .. new RecognisedArrangement(opener, named).Find(chips).Select(static row =>
            new FoundArrangement(row.Way, row.Image.Cart.Rom.Regions[0].Bytes, $"an image for {row.Image.Found.Platform.Facts.Name}: {row.Image.Found.Claim.Reason}")),
    ];
}
