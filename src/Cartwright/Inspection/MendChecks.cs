using Cartwright.Findings;

namespace Cartwright.Inspection;

/// <summary>Says before anything is mended whether an image can be, and whether it has what is named.</summary>
public static class MendChecks
{
    /// <summary>Whether the headers that mending would put right are there; a finding for each that is not.</summary>
    /// <param name="image">The image.</param>
    /// <param name="log">Receives the findings.</param>
    public static bool CanMend(OpenedImage image, FindingLog log)
    {
        foreach (var header in image.Cart.Headers.Where(header => header.Table.IsOther?.Invoke(image.Raw(header)) == true))
        {
            log.Add(InspectionFindings.NoHeader, SourcePlace.At(image.File, header.Entries[0].Offset), $"The {header.Table.Title} is not there: its bytes hold something else.");
        }

        return !log.HasErrors;
    }

    /// <summary>Whether the image has the checksums and fields that are named; a finding for each name it does not have.</summary>
    /// <param name="image">The image.</param>
    /// <param name="names">The names.</param>
    /// <param name="place">Where they were given.</param>
    /// <param name="log">Receives the findings.</param>
    public static bool KnowsNames(OpenedImage image, IEnumerable<string> names, SourcePlace place, FindingLog log)
    {
        var known = image.Cart.Headers.SelectMany(static header => header.Checksums.Select(static entry => entry.Row.Name)
            .Concat(header.Entries.Where(static entry => entry.Field.Repair is { OnlyNamed: true }).Select(static entry => entry.Field.Name))).ToList();
        foreach (var name in names.Where(name => !known.Contains(name, StringComparer.OrdinalIgnoreCase)))
        {
            log.Add(InspectionFindings.NoSuchChecksum, place, $"The image has no checksum or field `{name}` that is put right on request.", known.Count == 0 ? null : $"one of {string.Join(", ", known)}", NearestName.Question(name, known));
        }

        return !log.HasErrors;
    }
}
